package crumbclock.domain.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {

    /** Resistivities of twelve silicon wafers, NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.2. */
    private static final List<Double> WAFERS = List.of(95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065,
            95.0925, 95.1990, 95.1682);

    @Test
    void should_find_the_published_percentile() {
        // section 7.2.6.2: 0.9 × 13 = 11.7, so the 90th percentile is 95.1981
        assertThat(Spread.percentile(WAFERS.stream().sorted().toList(), 0.9)).isCloseTo(95.1981, within(0.00005));
    }

    @Test
    void should_take_median_and_quartiles_by_the_same_rule() {
        var spread = Spread.of(WAFERS);

        // ranks 3.25, 6.5 and 9.75 of the same ordered wafers, by hand
        assertThat(spread.lower()).isCloseTo(95.1065 + 0.25 * 0.0130, within(1e-9));
        assertThat(spread.median()).isCloseTo((95.1567 + 95.1591) / 2, within(1e-9));
        assertThat(spread.upper()).isCloseTo(95.1772 + 0.75 * 0.0165, within(1e-9));
        assertThat(spread.seen()).isEqualTo(12);
    }

    @Test
    void should_stay_inside_what_was_seen() {
        assertThat(Spread.of(List.of(1.5))).isEqualTo(new Spread(1.5, 1.5, 1.5, 1));
        assertThat(Spread.of(List.of(2.0, 1.0))).isEqualTo(new Spread(1, 1.5, 2, 2));
        assertThat(Spread.of(List.of(3.0, 1.0, 2.0))).isEqualTo(new Spread(1, 2, 3, 3));
    }
}
