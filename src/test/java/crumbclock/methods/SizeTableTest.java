package crumbclock.methods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbclock.domain.work.Footprint;
import org.junit.jupiter.api.Test;

import java.util.Map;

class SizeTableTest {

    private final SizeTable coat = SizeTable.of(Map.of("6in", 12, "10in", 20, "203.2mm", 15));

    @Test
    void takes_the_figure_of_a_size_and_goes_straight_between_two() {
        assertThat(coat.wholeAt(152.4)).isEqualTo(12);
        assertThat(coat.wholeAt(203.2)).isEqualTo(15);
        assertThat(coat.at(177.8)).isEqualTo(13.5);
        assertThat(coat.wholeAt(177.8)).isEqualTo(14);
    }

    @Test
    void holds_the_smallest_below_and_goes_on_above() {
        assertThat(coat.wholeAt(101.6)).isEqualTo(12);
        assertThat(coat.wholeAt(304.8)).isEqualTo(25);
    }

    @Test
    void does_not_interpolate_temperatures() {
        var oven = SizeTable.of(Map.of("any", 175, "10in", 165));
        assertThat(oven.stepAt(229)).isEqualTo(175);
        assertThat(oven.stepAt(254)).isEqualTo(165);
        assertThat(oven.stepAt(356)).isEqualTo(165);
    }

    @Test
    void says_what_it_cannot_read() {
        assertThatThrownBy(() -> SizeTable.of(Map.of("large", 3)))
                .hasMessage("read size \"large\"; expected \"any\" or a size such as 8in or 203mm");
        assertThatThrownBy(() -> SizeTable.of(Map.of("in", 3))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SizeTable.of(Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void names_pools_by_inches_where_they_fit() {
        assertThat(Geometry.poolSize(new Footprint(true, 203, 203))).isEqualTo("8in");
        assertThat(Geometry.poolSize(new Footprint(false, 330, 229))).isEqualTo("9x13in");
        assertThat(Geometry.poolSize(new Footprint(true, 200, 200))).isEqualTo("200mm");
        assertThat(Geometry.nominalMm(new Footprint(true, 203, 203))).isEqualTo(203.2, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(Geometry.nominalMm(new Footprint(true, 200, 200))).isEqualTo(200);
    }
}
