package crumbclock.report.svg;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import crumbclock.report.Xml;
import crumbclock.report.view.OvenMoment;
import crumbclock.report.view.PlanView;
import crumbclock.report.view.ShelfStretch;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ShelfDrawingTest {

    private final PlanView view = new PlanView(ReportFixture.problem(), ReportPlans.sound());

    private static double value(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    /** Left, top, width and depth of the surrounding box. */
    private static double[] box(Element group) {
        var circles = Xml.all(group, "circle");
        if (!circles.isEmpty()) {
            var circle = circles.get(0);
            double radius = value(circle, "r");
            return new double[] {value(circle, "cx") - radius, value(circle, "cy") - radius, 2 * radius, 2 * radius};
        }
        var rect = Xml.all(group, "rect").get(0);
        return new double[] {value(rect, "x"), value(rect, "y"), value(rect, "width"), value(rect, "height")};
    }

    @Test
    void draws_every_thing_on_a_shelf_where_it_stands_one_unit_a_millimetre() {
        var stretches = ShelfStretch.of(view);
        assertThat(stretches).isNotEmpty();
        for (ShelfStretch stretch : stretches) {
            var svg = Xml.parse(ShelfDrawing.draw(view, new Scale(10), stretch)).getDocumentElement();
            var groups = Xml.withClass(svg, "g", "item");
            int count = stretch.items().size();
            assertThat(groups).as("above and front").hasSize(2 * count);
            for (int i = 0; i < count; i++) {
                var item = stretch.items().get(i);
                var place = item.placement();
                assertThat(box(groups.get(i))).containsExactly(place.xMm(),
                        stretch.shelf().depthMm() - place.yMm() - item.footprint().depthMm(),
                        item.footprint().widthMm(), item.footprint().depthMm());
            }
        }
    }

    @Test
    void keeps_the_scale_of_paper() {
        var svg = Xml.parse(ShelfDrawing.draw(view, new Scale(10), ShelfStretch.of(view).get(0))).getDocumentElement();
        String[] viewBox = svg.getAttribute("viewBox").split(" ");

        double paper = Double.parseDouble(svg.getAttribute("width").replace("mm", ""));

        assertThat(paper * 10).isCloseTo(Double.parseDouble(viewBox[2]), Offset.offset(0.1));
        assertThat(new Scale(10).paperWidth(stretchWidth())).isEqualTo(svg.getAttribute("width"));
    }

    private int stretchWidth() {
        return ShelfStretch.of(view).get(0).shelf().widthMm();
    }

    @Test
    void draws_heights_in_the_view_from_the_front() {
        var stretch = ShelfStretch.of(view).get(0);
        var svg = Xml.parse(ShelfDrawing.draw(view, new Scale(10), stretch)).getDocumentElement();
        var front = Xml.withClass(svg, "g", "item").get(stretch.items().size());

        assertThat(box(front)[3]).isEqualTo(stretch.items().get(0).form().heightMm());
    }

    @Test
    void draws_every_pan_on_its_rack() {
        int drawn = 0;
        for (OvenMoment moment : OvenMoment.of(view)) {
            for (int rack = 0; rack < moment.cavity().racks().size(); rack++) {
                int index = rack;
                var pans = moment.pans().stream().filter(pan -> pan.place().rack() == index).toList();
                var svg = Xml.parse(RackDrawing.draw(view, new Scale(10), moment, rack)).getDocumentElement();
                var groups = Xml.withClass(svg, "g", "item");
                assertThat(groups).hasSameSizeAs(pans);
                for (int i = 0; i < pans.size(); i++) {
                    var pan = pans.get(i);
                    var foot = pan.pan().footprint();
                    assertThat(box(groups.get(i))).containsExactly(pan.place().xMm(),
                            moment.cavity().racks().get(rack).depthMm() - pan.place().yMm() - foot.depthMm(),
                            foot.widthMm(), foot.depthMm());
                    drawn++;
                }
            }
        }
        assertThat(drawn).isEqualTo(ReportPlans.sound().timetable().pans().size());
    }

    @Test
    void chooses_one_scale_by_the_widest_thing() {
        assertThat(Scale.forWidest(1_700).times()).isEqualTo(10);
        assertThat(Scale.forWidest(1_701).times()).isEqualTo(20);
    }
}
