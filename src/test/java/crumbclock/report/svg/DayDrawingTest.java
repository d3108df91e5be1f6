package crumbclock.report.svg;

import static crumbclock.report.ReportFixture.fri;
import static crumbclock.report.ReportFixture.sat;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import crumbclock.report.Xml;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DayDrawingTest {

    private final PlanView view = new PlanView(ReportFixture.problem(), ReportPlans.sound());

    private static Lane.Bar bar(int from, int until) {
        return new Lane.Bar(new Span(from, until), Lane.Look.STAND, "A1", "cool", "t0");
    }

    @Test
    void draws_only_the_hours_with_work_widened_to_full_hours() {
        var days = ReportFixture.problem().clock().days();

        assertThat(Panels.of(view, days.get(0))).containsExactly(new Span(fri(17, 0), fri(21, 0)));
        assertThat(Panels.of(view, days.get(1))).containsExactly(new Span(sat(7, 0), sat(14, 0)));
    }

    @Test
    void draws_well_formed_panels_with_a_bar_for_every_stretch_of_work() {
        var days = ReportFixture.problem().clock().days();
        for (Span day : days) {
            for (DayDrawing.Panel panel : DayDrawing.draw(view, day)) {
                var svg = Xml.parse(panel.svg()).getDocumentElement();
                long work = ReportPlans.sound().timetable().steps().stream().flatMap(step -> step.work().stream())
                        .flatMap(one -> one.spans().stream()).filter(day::overlaps).count();
                int drawn = Xml.withClass(svg, "g", "work").size() + Xml.withClass(svg, "g", "away").size();
                assertThat(drawn).isEqualTo((int) work).isPositive();
            }
        }
    }

    @Test
    void a_touch_has_the_name_of_its_order_beside_its_colour() {
        var panel = DayDrawing.draw(view, ReportFixture.problem().clock().days().get(0)).get(0);

        assertThat(Xml.withClass(Xml.parse(panel.svg()).getDocumentElement(), "g", "put-in")).hasSize(6);
        assertThat(panel.svg()).contains(">A2<").contains(">B1<");
    }

    @Test
    void bars_that_touch_share_a_row_and_bars_that_overlap_do_not() {
        assertThat(new Lane("stores", "F1", List.of(bar(0, 10), bar(10, 20)), List.of()).rowCount()).isEqualTo(1);
        assertThat(new Lane("stores", "F1", List.of(bar(0, 11), bar(10, 20)), List.of()).rowCount()).isEqualTo(2);
    }

    @Test
    void counts_things_when_there_are_too_many_rows() {
        var eight = IntStream.range(0, 8).mapToObj(i -> bar(0, 10)).toList();
        var nine = IntStream.range(0, 9).mapToObj(i -> bar(0, 10)).toList();

        assertThat(new Lane("stores", "F1", eight, List.of()).readable().bars()).hasSize(8);
        assertThat(new Lane("stores", "F1", nine, List.of()).readable().bars()).singleElement()
                .extracting(Lane.Bar::label).isEqualTo("9");
    }

    @Test
    void writes_numbers_with_a_point_and_no_more_digits_than_needed() {
        assertThat(Svg.number(1.5)).isEqualTo("1.5");
        assertThat(Svg.number(2.0)).isEqualTo("2");
        assertThat(Svg.number(100)).isEqualTo("100");
        assertThat(Svg.number(-0.001)).isEqualTo("0");
        assertThat(Svg.number(1.005)).isEqualTo("1.01");
    }

    @Test
    void escapes_what_markup_would_read_and_drops_control_characters() {
        assertThat(Svg.escape("<a & \"b'>\u0007")).isEqualTo("&lt;a &amp; &quot;b&#39;&gt;");
    }

    @Test
    void shortens_or_leaves_out_a_text_that_does_not_fit() {
        assertThat(Fit.shorten("final coat", 10, 100)).isEqualTo("final coat");
        assertThat(Fit.shorten("final coat", 10, 40)).isEqualTo("final…");
        assertThat(Fit.shorten("final coat", 10, 10)).isEmpty();
        assertThat(Fit.lines("let the ganache set", 10, 80, 2)).containsExactly("let the", "ganache set");
    }
}
