package crumbclock.report.view;

import static crumbclock.report.ReportFixture.fri;
import static crumbclock.report.ReportFixture.sat;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.work.Footprint;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import crumbclock.units.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfStretchTest {

    private final PlanView view = new PlanView(ReportFixture.problem(), ReportPlans.sound());

    @Test
    void cuts_a_shelf_at_every_change_and_leaves_out_empty_stretches() {
        var f1 = ShelfStretch.of(view).stream().filter(one -> one.shelf().id().equals("F1")).toList();
        var f2 = ShelfStretch.of(view).stream().filter(one -> one.shelf().id().equals("F2")).toList();

        assertThat(f1).extracting(ShelfStretch::when)
                .containsExactly(new Span(fri(20, 52), sat(8, 0)), new Span(sat(8, 0), sat(8, 40)));
        assertThat(f1).extracting(one -> one.goods().size()).containsExactly(1, 0);
        assertThat(f2).extracting(ShelfStretch::when).containsExactly(new Span(fri(18, 25), fri(19, 40)),
                new Span(fri(19, 40), fri(20, 8)), new Span(fri(20, 23), sat(8, 0)));
    }

    @Test
    void tells_what_came_and_what_goes() {
        var f2 = ShelfStretch.of(view).stream().filter(one -> one.shelf().id().equals("F2")).toList();

        assertThat(f2.get(0).items()).singleElement().satisfies(tub -> {
            assertThat(tub.cameIn()).isTrue();
            assertThat(tub.goesOut()).isFalse();
        });
        assertThat(f2.get(1).items()).extracting(ShelfStretch.Item::cameIn).containsExactly(false, true);
        assertThat(f2.get(1).items()).extracting(ShelfStretch.Item::goesOut).containsExactly(true, true);
    }

    @Test
    void counts_the_free_floor_with_real_circles() {
        // 490 × 340 = 166,600 mm²; drum 305²·π/4 = 73,062; milk 160 × 340 = 54,400; free 23.49 %
        assertThat(ShelfStretch.of(view).get(0).freePercent()).isEqualTo(23);
        assertThat(ShelfStretch.of(view).get(0).tallestMm()).isEqualTo(125);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 100, 100, left front", "200, 0, 100, 100, right front", "100, 100, 100, 100, middle",
        "0, 200, 100, 100, left back", "100, 200, 100, 100, middle back", "0, 100, 210, 100, across the middle",
        "0, 200, 210, 90, across the back", "0, 0, 100, 210, left", "0, 0, 300, 300, takes the whole area",
        "50, 0, 100, 100, middle front", "49, 0, 100, 100, left front", "150, 0, 100, 100, middle front",
        "151, 0, 100, 100, right front", "0, 0, 209, 100, middle front",
    })
    void says_where_something_stands(int x, int y, int width, int depth, String words) {
        assertThat(PlaceWords.position(x, y, new Footprint(false, width, depth), 300, 300)).isEqualTo(words);
    }
}
