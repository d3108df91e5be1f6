package crumbclock.engine.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.shelf.PlainSpotFinder.Item;
import crumbclock.engine.shelf.TouchPoints.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TouchPointsTest {
    private static final int CASES = 3_000;

    @Test
    void should_name_the_corners_of_an_empty_bay_from_the_back() {
        NoGoZones none = new NoGoZones(1);

        assertThat(TouchPoints.of(none, 10, 90, 20, 80)).containsExactly(
                new Point(10, 80), new Point(90, 80), new Point(10, 20), new Point(90, 20));
        assertThat(TouchPoints.of(none, 10, 9, 20, 80)).isEmpty();
    }

    /** Circle of 50 in the back left corner, the same again without a gap: three corners, and a tangent on each of two walls. */
    @Test
    void should_name_tangents_on_the_walls() {
        NoGoZones zones = new NoGoZones(1);
        zones.add(true, 0, 150, 50, 50);
        zones.shapeFor(true, 50, 50, 0);

        assertThat(TouchPoints.of(zones, 0, 150, 0, 150)).containsExactly(
                new Point(50, 150), new Point(150, 150), new Point(0, 100), new Point(0, 0), new Point(150, 0));
    }

    /** Two circles of 60, centres 80 apart; one of 40 touches both 30 off the line (3-4-5). */
    @Test
    void should_name_tangents_between_two_circles() {
        NoGoZones zones = new NoGoZones(2);
        zones.add(true, 100, 100, 60, 60);
        zones.add(true, 180, 100, 60, 60);
        zones.shapeFor(true, 40, 40, 0);

        assertThat(TouchPoints.of(zones, 0, 400, 0, 400)).contains(
                new Point(170 - 20, 130 + 30 - 20), new Point(170 - 20, 130 - 30 - 20));
    }

    @Test
    void should_name_only_free_places_each_once_from_the_back() {
        assertThat(missed(true, true)).isLessThan(0.01);
    }

    /** Among rectangles without a gap the rearmost left place always touches two things. */
    @Test
    void should_name_the_finders_place_among_rectangles() {
        assertThat(missed(false, false)).isZero();
    }

    /** Share of the cases with a free place in which no touching place is named; without gaps it must be the finder's own. */
    private static double missed(boolean circles, boolean gaps) {
        SpotFinder finder = new SpotFinder(8);
        int possible = 0;
        int missed = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Random random = new Random(seed);
            int size = 10 + random.nextInt(31);
            int gap = gaps ? random.nextInt(5) : 0;
            List<Item> neighbours = new ArrayList<>();
            finder.clear();
            for (int i = random.nextInt(9); i > 0; i--) {
                boolean round = circles && random.nextBoolean();
                int w = 2 + random.nextInt(12);
                int d = round ? w : 2 + random.nextInt(12);
                List<Item> free = PlainSpotFinder.allFree(size, size, gap, 1, neighbours, round, w, d, false);
                if (!free.isEmpty()) {
                    Item item = free.get(random.nextInt(free.size()));
                    neighbours.add(item);
                    finder.addNeighbour(round, item.x(), item.y(), w, d);
                }
            }
            boolean round = circles && random.nextBoolean();
            int w = 2 + random.nextInt(12);
            int d = round ? w : 2 + random.nextInt(12);
            boolean found = finder.find(size, size, gap, 1, round, w, d, false);
            finder.zones().shapeFor(round, w, d, gap);
            List<Point> points = TouchPoints.of(finder.zones(), 1, size - 1 - w, 1, size - 1 - d);

            assertThat(points).as("seed %d", seed).doesNotHaveDuplicates().isSortedAccordingTo(
                    (a, b) -> a.yMm() != b.yMm() ? b.yMm() - a.yMm() : a.xMm() - b.xMm());
            for (Point point : points) {
                Item item = new Item(round, point.xMm(), point.yMm(), w, d);
                assertThat(PlainSpotFinder.fits(size, size, gap, 1, neighbours, item))
                        .as("seed %d: %s is free", seed, point).isTrue();
            }
            possible += found ? 1 : 0;
            boolean named = gaps ? !points.isEmpty() : points.contains(new Point(finder.xMm(), finder.yMm()));
            missed += found && !named ? 1 : 0;
        }
        assertThat(possible).as("cases of either kind").isBetween(CASES / 10, CASES * 19 / 20);
        return (double) missed / possible;
    }
}
