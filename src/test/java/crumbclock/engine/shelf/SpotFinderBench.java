package crumbclock.engine.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Finds per second on shelves of a fridge, about half of them too full for the piece. Printed on the error stream:
 * {@code mvn test -Dtest=SpotFinderBench -Dgroups.excluded=}.
 */
@Tag("bench")
class SpotFinderBench {
    private static final int SHELVES = 512;
    private static final int[] DIAMETERS = {152, 165, 178, 203, 216, 229, 254};

    private record Shelf(int[][] neighbours, int widthMm, int depthMm) {
    }

    @Test
    void should_find_often_enough_for_the_decoder() {
        for (String shapes : new String[] {"rectangles", "circles", "mixed"}) {
            for (int most : new int[] {0, 2, 4, 6, 8}) {
                Shelf[] shelves = shelves(shapes, most);
                SpotFinder finder = new SpotFinder(8);
                long found = 0;
                for (int warm = 0; warm < 200; warm++) {
                    found += round(finder, shelves, shapes);
                }
                long start = System.nanoTime();
                int rounds = 400;
                long hits = 0;
                for (int i = 0; i < rounds; i++) {
                    hits += round(finder, shelves, shapes);
                }
                double nanos = (System.nanoTime() - start) / (double) rounds / SHELVES;
                System.err.printf(Locale.ROOT,
                        "%-10s %d neighbours: %6.0f ns a find, %,12.0f a second, %2.0f %% found%n",
                        shapes, most, nanos, 1e9 / nanos, 100.0 * hits / rounds / SHELVES);
                assertThat(hits * 200).isEqualTo(found * rounds);
            }
        }
    }

    private static int round(SpotFinder finder, Shelf[] shelves, String shapes) {
        int found = 0;
        for (int i = 0; i < shelves.length; i++) {
            Shelf shelf = shelves[i];
            finder.clear();
            for (int[] n : shelf.neighbours()) {
                finder.addNeighbour(n[0] == 1, n[1], n[2], n[3], n[4]);
            }
            int diameter = DIAMETERS[i % DIAMETERS.length];
            boolean round = shapes.equals("circles") || shapes.equals("mixed") && i % 2 == 0;
            if (finder.find(shelf.widthMm(), shelf.depthMm(), 25, 10, round, diameter, diameter, false)) {
                found++;
            }
        }
        return found;
    }

    /** Shelves filled by the finder itself, some places vacated again, as in a weekend. */
    private static Shelf[] shelves(String shapes, int most) {
        Shelf[] shelves = new Shelf[SHELVES];
        SpotFinder finder = new SpotFinder(8);
        for (int i = 0; i < SHELVES; i++) {
            Random random = new Random(i);
            int width = 105 * most + 150 + random.nextInt(130);
            int depth = 500 + random.nextInt(80);
            List<int[]> placed = new ArrayList<>();
            for (int tries = 0; tries < 40 && placed.size() < most; tries++) {
                int diameter = DIAMETERS[random.nextInt(DIAMETERS.length)];
                int round = shapes.equals("circles") || shapes.equals("mixed") && random.nextBoolean() ? 1 : 0;
                finder.clear();
                placed.forEach(n -> finder.addNeighbour(n[0] == 1, n[1], n[2], n[3], n[4]));
                if (finder.find(width, depth, 25, 10, round == 1, diameter, diameter, false, random.nextInt(4) == 0)) {
                    placed.add(new int[] {round, finder.xMm(), finder.yMm(), diameter, diameter});
                    if (random.nextInt(8) == 0) {
                        placed.remove(random.nextInt(placed.size()));
                    }
                }
            }
            shelves[i] = new Shelf(placed.toArray(int[][]::new), width, depth);
        }
        return shelves;
    }
}
