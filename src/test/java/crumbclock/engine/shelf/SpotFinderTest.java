package crumbclock.engine.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotFinderTest {
    private final SpotFinder finder = new SpotFinder(1);

    @Test
    void should_stand_at_the_back_left_of_an_empty_bay() {
        boolean found = finder.find(500, 400, 25, 10, false, 254, 203, false);

        assertThat(found).isTrue();
        assertThat(finder.xMm()).isEqualTo(10);
        assertThat(finder.yMm()).isEqualTo(400 - 10 - 203);
        assertThat(finder.turned()).isFalse();
    }

    @Test
    void should_stand_at_the_front_left_when_asked_from_the_front() {
        assertThat(finder.find(500, 400, 25, 10, false, 254, 203, false, true)).isTrue();
        assertThat(finder.xMm()).isEqualTo(10);
        assertThat(finder.yMm()).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({"274, 223, true", "273, 223, false", "274, 222, false"})
    void should_keep_the_wall_gap_to_the_mm(int bayWidth, int bayDepth, boolean expected) {
        assertThat(finder.find(bayWidth, bayDepth, 25, 10, false, 254, 203, false)).isEqualTo(expected);
    }

    @Test
    void should_turn_only_when_it_does_not_fit_as_it_is() {
        assertThat(finder.find(300, 400, 0, 0, false, 250, 350, true)).isTrue();
        assertThat(finder.turned()).isFalse();

        assertThat(finder.find(400, 300, 0, 0, false, 250, 350, true)).isTrue();
        assertThat(finder.turned()).isTrue();

        assertThat(finder.find(400, 300, 0, 0, false, 250, 350, false)).isFalse();
    }

    /** 254 + 25 + 203 = 482: computed by hand. */
    @ParameterizedTest
    @CsvSource({"490, true", "482, true", "481, false", "480, false"})
    void should_keep_the_gap_between_two_boards(int shelfWidth, boolean expected) {
        assertThat(finder.find(shelfWidth, 340, 25, 0, false, 254, 254, false)).isTrue();
        finder.addNeighbour(false, finder.xMm(), finder.yMm(), 254, 254);

        assertThat(finder.find(shelfWidth, 340, 25, 0, false, 203, 203, false)).isEqualTo(expected);
    }

    /** Corner to corner: the 3-4-5 triangle makes the distance a whole number. */
    @ParameterizedTest
    @CsvSource({"13, 14, true", "12, 14, false", "13, 13, false", "15, 10, true", "14, 10, false", "15, 5, true"})
    void should_measure_the_gap_between_corners_in_a_straight_line(int x, int y, boolean expected) {
        finder.addNeighbour(false, 0, 0, 10, 10);

        assertThat(finder.fits(100, 100, 5, 0, false, x, y, 7, 7)).isEqualTo(expected);
    }

    /** Odd diameters 3 and 7, gap 5: centres 10 apart, 6 and 8 along the axes. */
    @ParameterizedTest
    @CsvSource({"6, 8, true", "5, 8, false", "6, 7, false", "10, 0, true", "9, 4, false"})
    void should_measure_between_circles_of_odd_diameter(int centreRight, int centreUp, boolean expected) {
        finder.addNeighbour(true, 20, 20, 3, 3);

        assertThat(finder.fits(100, 100, 5, 0, true, 20 + centreRight - 2, 20 + centreUp - 2, 7, 7)).isEqualTo(expected);
    }

    /** Centre of the circle 3 right of and 4 above the rectangle's corner: 5 apart, radius 4 and gap 1. */
    @ParameterizedTest
    @CsvSource({"3, 4, true", "2, 4, false", "3, 3, false", "5, -2, true", "4, -2, false"})
    void should_measure_between_a_circle_and_a_rectangle(int centreRight, int centreUp, boolean expected) {
        finder.addNeighbour(false, 20, 20, 10, 10);
        assertThat(finder.fits(100, 100, 1, 0, true, 30 + centreRight - 4, 30 + centreUp - 4, 8, 8)).isEqualTo(expected);

        finder.clear();
        finder.addNeighbour(true, 30 + centreRight - 4, 30 + centreUp - 4, 8, 8);
        assertThat(finder.fits(100, 100, 1, 0, false, 20, 20, 10, 10)).isEqualTo(expected);
    }

    @Test
    void should_let_pieces_touch_without_a_gap() {
        finder.addNeighbour(false, 0, 0, 100, 300);

        assertThat(finder.find(250, 300, 0, 0, false, 150, 300, false)).isTrue();
        assertThat(finder.xMm()).isEqualTo(100);
        assertThat(finder.find(249, 300, 0, 0, false, 150, 300, false)).isFalse();
    }

    /** The last gap of a sliver: one whole position in the middle of the bay, no wall touched. */
    @Test
    void should_find_the_only_whole_mm_left() {
        finder.addNeighbour(false, 0, 0, 300, 50);
        finder.addNeighbour(false, 0, 151, 300, 149);
        finder.addNeighbour(false, 0, 50, 97, 101);
        finder.addNeighbour(false, 198, 50, 102, 101);

        assertThat(finder.find(300, 300, 0, 0, false, 101, 101, false)).isTrue();
        assertThat(finder.xMm()).isEqualTo(97);
        assertThat(finder.yMm()).isEqualTo(50);
        assertThat(finder.find(300, 300, 0, 0, false, 102, 101, true)).isFalse();
        assertThat(finder.find(300, 300, 1, 0, false, 101, 101, true)).isFalse();
    }

    @Test
    void should_forget_neighbours_when_cleared() {
        finder.addNeighbour(false, 0, 0, 500, 400);
        assertThat(finder.find(500, 400, 0, 0, true, 100, 100, false)).isFalse();

        finder.clear();

        assertThat(finder.find(500, 400, 0, 0, true, 100, 100, false)).isTrue();
    }

    @Test
    void should_answer_right_at_the_longest_lengths() {
        int most = SpotFinder.MOST_MM;
        finder.addNeighbour(true, 0, 0, most / 2, most / 2);

        assertThat(finder.find(most, most, 0, 0, true, most / 2, most / 2, false)).isTrue();
        finder.addNeighbour(true, most / 2, most / 2, most / 2, most / 2);
        finder.addNeighbour(true, 0, most / 2, most / 2, most / 2);
        assertThat(finder.find(most, most, 0, 0, true, most / 2, most / 2, false)).isTrue();
        assertThat(finder.find(most, most, 0, 0, true, most / 2 + 1, most / 2 + 1, false)).isFalse();
    }

    /** Called about 50 times a decode: garbage would cost more than the search. */
    @Test
    void should_allocate_nothing_once_grown() {
        var threads = (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        for (int i = 0; i < 2_000; i++) {
            placeSeven();
        }
        long before = threads.getThreadAllocatedBytes(thread);

        int found = 0;
        for (int i = 0; i < 10_000; i++) {
            found += placeSeven();
        }

        assertThat(found).isEqualTo(70_000);
        assertThat(threads.getThreadAllocatedBytes(thread) - before)
                .as("bytes for 80,000 finds; the smallest object takes 16, the rest is the JVM's own").isLessThan(4 * 80_000);
    }

    private int placeSeven() {
        finder.clear();
        int placed = 0;
        while (placed < 8 && finder.find(900, 540, 25, 10, placed % 2 == 0, 203, 203, true, placed % 3 == 0)) {
            finder.addNeighbour(placed % 2 == 0, finder.xMm(), finder.yMm(), 203, 203);
            placed++;
        }
        return placed;
    }

    @Test
    void should_refuse_what_no_shelf_can_have() {
        assertThatIllegalArgumentException().isThrownBy(() -> finder.addNeighbour(true, 0, 0, 200, 201))
                .withMessage("a round piece has one diameter: 200 × 201");
        assertThatIllegalArgumentException().isThrownBy(() -> finder.find(500, 400, 0, 0, false, 0, 10, false))
                .withMessage("a piece measures 1 to 10000000 mm: 0 × 10");
        assertThatIllegalArgumentException().isThrownBy(() -> finder.find(500, 400, -1, 0, false, 10, 10, false))
                .withMessageContaining("-1");
        assertThatIllegalArgumentException().isThrownBy(() -> finder.find(-1, 400, 0, 0, false, 10, 10, false))
                .withMessageContaining("-1 × 400");
        assertThatIllegalArgumentException().isThrownBy(() -> finder.addNeighbour(false, 10_000_001, 0, 1, 1))
                .withMessageContaining("10000001");
    }
}
