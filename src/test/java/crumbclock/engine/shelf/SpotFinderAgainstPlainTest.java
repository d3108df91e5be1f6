package crumbclock.engine.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.shelf.PlainSpotFinder.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The fast finder against every whole mm of small bays: the same answer to the mm, in both orders. */
class SpotFinderAgainstPlainTest {
    private static final int CASES = 4_000;

    private enum Shapes {
        RECTANGLES, CIRCLES, MIXED;

        boolean round(Random random) {
            return this == CIRCLES || this == MIXED && random.nextBoolean();
        }
    }

    private enum Neighbours {
        /** Placed one by one at free places, as an engine would. */
        PLACED,
        /** Thrown anywhere, overlapping each other and the edges, as goods may be. */
        THROWN
    }

    @ParameterizedTest
    @EnumSource(Shapes.class)
    void should_find_the_plain_twins_place_beside_placed_neighbours(Shapes shapes) {
        compare(shapes, Neighbours.PLACED);
    }

    @ParameterizedTest
    @EnumSource(Shapes.class)
    void should_find_the_plain_twins_place_beside_thrown_neighbours(Shapes shapes) {
        compare(shapes, Neighbours.THROWN);
    }

    /** Fewer but larger: real mm, so that many rows are skipped at once. */
    @ParameterizedTest
    @EnumSource(Shapes.class)
    void should_find_the_plain_twins_place_on_a_small_real_shelf(Shapes shapes) {
        SpotFinder finder = new SpotFinder(8);
        int found = 0;
        for (int seed = 0; seed < 120; seed++) {
            Random random = new Random(seed);
            int bayW = 180 + random.nextInt(120);
            int bayD = 180 + random.nextInt(80);
            int gap = random.nextInt(26);
            boolean fromFront = random.nextBoolean();
            List<Item> neighbours = new ArrayList<>();
            finder.clear();
            for (int i = random.nextInt(9); i > 0; i--) {
                boolean round = shapes.round(random);
                int w = 30 + random.nextInt(70);
                int d = round ? w : 30 + random.nextInt(70);
                if (finder.find(bayW, bayD, gap, 10, round, w, d, false, random.nextBoolean())) {
                    neighbours.add(new Item(round, finder.xMm(), finder.yMm(), w, d));
                    finder.addNeighbour(round, finder.xMm(), finder.yMm(), w, d);
                }
            }
            boolean round = shapes.round(random);
            int w = 30 + random.nextInt(80);
            int d = round ? w : 30 + random.nextInt(80);
            List<Item> expected = PlainSpotFinder.allFree(bayW, bayD, gap, 10, neighbours, round, w, d, fromFront);

            boolean answer = finder.find(bayW, bayD, gap, 10, round, w, d, false, fromFront);

            assertThat(answer).as("%s seed %d: found", shapes, seed).isEqualTo(!expected.isEmpty());
            if (answer) {
                found++;
                assertThat(new int[] {finder.xMm(), finder.yMm()}).as("%s seed %d: place", shapes, seed)
                        .containsExactly(expected.get(0).x(), expected.get(0).y());
            }
        }
        assertThat(found).as("cases of either kind").isBetween(12, 114);
    }

    private static void compare(Shapes shapes, Neighbours how) {
        SpotFinder finder = new SpotFinder(1);
        int found = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Random random = new Random(seed);
            int bayW = 8 + random.nextInt(33);
            int bayD = 8 + random.nextInt(33);
            int gap = random.nextInt(3) == 0 ? 0 : random.nextInt(6);
            int wallGap = random.nextInt(4);
            boolean fromFront = random.nextBoolean();
            List<Item> neighbours = neighbours(random, shapes, how, bayW, bayD, gap, wallGap);
            boolean round = shapes.round(random);
            int w = 1 + random.nextInt(16);
            int d = round ? w : 1 + random.nextInt(16);
            boolean mayTurn = random.nextBoolean();
            List<Item> asIs = PlainSpotFinder.allFree(bayW, bayD, gap, wallGap, neighbours, round, w, d, fromFront);
            List<Item> turned = PlainSpotFinder.allFree(bayW, bayD, gap, wallGap, neighbours, round, d, w, fromFront);

            finder.clear();
            neighbours.forEach(n -> finder.addNeighbour(n.round(), n.x(), n.y(), n.w(), n.d()));
            boolean answer = finder.find(bayW, bayD, gap, wallGap, round, w, d, mayTurn, fromFront);

            boolean expectTurned = asIs.isEmpty() && mayTurn && w != d;
            List<Item> expected = expectTurned ? turned : asIs;
            assertThat(answer).as("%s %s seed %d: found", shapes, how, seed).isEqualTo(!expected.isEmpty());
            if (answer) {
                found++;
                assertThat(finder.turned()).as("%s %s seed %d: turned", shapes, how, seed).isEqualTo(expectTurned);
                assertThat(new int[] {finder.xMm(), finder.yMm()}).as("%s %s seed %d: place", shapes, how, seed)
                        .containsExactly(expected.get(0).x(), expected.get(0).y());
            }
            for (int probe = 0; probe < 20; probe++) {
                int x = random.nextInt(bayW + 4) - 2;
                int y = random.nextInt(bayD + 4) - 2;
                assertThat(finder.fits(bayW, bayD, gap, wallGap, round, x, y, w, d))
                        .as("%s %s seed %d: fits at %d, %d", shapes, how, seed, x, y).isEqualTo(PlainSpotFinder
                                .fits(bayW, bayD, gap, wallGap, neighbours, new Item(round, x, y, w, d)));
            }
        }
        assertThat(found).as("cases of either kind").isBetween(CASES / 10, CASES * 19 / 20);
    }

    private static List<Item> neighbours(Random random, Shapes shapes, Neighbours how, int bayW, int bayD, int gap,
            int wallGap) {
        List<Item> neighbours = new ArrayList<>();
        for (int i = random.nextInt(9); i > 0; i--) {
            boolean round = shapes.round(random);
            int w = 1 + random.nextInt(14);
            int d = round ? w : 1 + random.nextInt(14);
            if (how == Neighbours.THROWN) {
                neighbours.add(new Item(round, random.nextInt(bayW + 10) - 5, random.nextInt(bayD + 10) - 5, w, d));
            } else {
                List<Item> free = PlainSpotFinder.allFree(bayW, bayD, gap, wallGap, neighbours, round, w, d, false);
                if (!free.isEmpty()) {
                    neighbours.add(free.get(random.nextInt(free.size())));
                }
            }
        }
        return neighbours;
    }
}
