package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.AMBIENT;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PlanAssert.assertThat;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aStore;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Rule;
import crumbclock.fixture.FormBuilder;
import crumbclock.fixture.PlanAssert;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The audit's geometry (R10) against packings that others have published: the best ones fit, anything larger does not.
 * A shelf's side of 1 is a million mm here, so that whole millimetres are fine enough.
 */
class PublishedPackingsTest {

    private static final int SIDE = 1_000_000;

    /**
     * Largest radius of n = 1 to 10 equal circles in a unit square: E. Specht, Packomania; proven optimal.
     */
    private static final double[] RADII = {0.5, 0.292893218813, 0.254333095030, 0.25, 0.207106781187, 0.187680601147,
        0.174457630187, 0.170540688701, 0.166666666667, 0.148204322565};

    /** Centres that reach those radii, found by numeric optimisation from many starts. */
    private static final String CENTRES = """
            1: 0.5000000000,0.5000000000
            2: 0.2928932188,0.7071067811 0.7071067811,0.2928932188
            3: 0.3859855926,0.7456669049 0.2543330950,0.2543330950 0.7456669049,0.3859855926
            4: 0.2500000000,0.2500000000 0.2500000000,0.7500000000 0.7500000000,0.2500000000
               0.7500000000,0.7500000000
            5: 0.2071067811,0.7928932188 0.2071067811,0.2071067811 0.7928932188,0.2071067811
               0.5000000000,0.5000000000 0.7928932188,0.7928932188
            6: 0.1876806011,0.5000000000 0.3958935337,0.1876806011 0.3958935337,0.8123193988
               0.8123193988,0.8123193988 0.6041064662,0.5000000000 0.8123193988,0.1876806011
            7: 0.1744576301,0.8255423698 0.8255423698,0.6510847396 0.5233728905,0.8255423698
               0.3489152603,0.1744576301 0.7056445740,0.1744577248 0.1744576301,0.4766271094
               0.5233728905,0.4766271094
            8: 0.1705406887,0.8294593112 0.8294593112,0.1705406887 0.7411809548,0.5000000000
               0.1705406887,0.1705406887 0.8294593112,0.8294593112 0.5000000000,0.2588190451
               0.5000000000,0.7411809548 0.2588190451,0.5000000000
            9: 0.8333333333,0.8333333333 0.8333333333,0.5000000000 0.5000000000,0.1666666666
               0.1666666666,0.5000000000 0.1666666666,0.1666666666 0.8333333333,0.1666666666
               0.5000000000,0.8333333333 0.1666666666,0.8333333333 0.5000000000,0.5000000000
            10: 0.2590884179,0.1482043225 0.5554970630,0.1482043225 0.1482043225,0.4230912125
               0.4134511905,0.8517956774 0.6326234340,0.6522421442 0.8517956774,0.8517956774
               0.1482043225,0.7194998577 0.8517956774,0.1562799658 0.4446129676,0.4230912125
               0.8517956774,0.4526886109
            """;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void should_accept_the_best_circles_in_a_square(int n) {
        shelf(SIDE, SIDE, centres().get(n), RADII[n - 1]).isSound();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void should_reject_circles_that_are_a_thousandth_larger(int n) {
        shelf(SIDE, SIDE, centres().get(n), RADII[n - 1] * 1.001).breaksOnly(Rule.R10);
    }

    @Test
    void should_judge_all_placements_at_hand() throws IOException {
        Path file = Path.of("../shared/data/circlepack/placements.csv");
        Assumptions.assumeTrue(Files.exists(file), "the published placements are not at hand");
        Map<String, List<double[]>> packings = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file).subList(1, Files.readAllLines(file).size())) {
            String[] cells = line.split(",");
            packings.computeIfAbsent(cells[0] + "," + cells[1] + "," + cells[3] + "," + cells[2], key -> new ArrayList<>())
                    .add(new double[] {Double.parseDouble(cells[5]), Double.parseDouble(cells[6])});
        }

        assertThat(packings.size()).isGreaterThan(30);
        packings.forEach((key, centres) -> {
            String[] board = key.split(",");
            int width = (int) Math.round(Double.parseDouble(board[0]) * SIDE);
            int depth = (int) Math.round(Double.parseDouble(board[1]) * SIDE);
            double radius = Double.parseDouble(board[2]);
            shelf(width, depth, centres, radius).isSound();
            shelf(width, depth, centres, radius * 1.001).breaksOnly(Rule.R10);
        });
    }

    /** A rectangle of squares without a gap (Z. Moroń, 1925): exact touching is fitting. */
    @Test
    void should_accept_the_squared_rectangle_and_no_shelf_smaller() {
        int[][] squares = {{18, 0, 0}, {15, 18, 0}, {14, 0, 18}, {10, 14, 22}, {9, 24, 23}, {8, 25, 15}, {7, 18, 15},
            {4, 14, 18}, {1, 24, 22}};

        squares(330, 320, squares).isSound();
        squares(329, 320, squares).breaksOnly(Rule.R10);
        squares(330, 319, squares).breaksOnly(Rule.R10);
    }

    /** Least-area rectangles for the squares 1 to 3, 1 to 4 and 1 to 5: 3 x 5, 5 x 7, 5 x 12 (R. Korf, 2003). */
    @Test
    void should_accept_consecutive_squares_in_their_least_rectangle() {
        int[][] three = {{3, 0, 0}, {2, 0, 3}, {1, 2, 3}};
        int[][] four = {{4, 0, 0}, {3, 0, 4}, {2, 3, 4}, {1, 4, 0}};
        int[][] five = {{5, 0, 0}, {4, 0, 5}, {3, 0, 9}, {2, 3, 9}, {1, 4, 5}};

        squares(30, 50, three).isSound();
        squares(29, 50, three).breaksOnly(Rule.R10);
        squares(50, 70, four).isSound();
        squares(50, 69, four).breaksOnly(Rule.R10);
        squares(50, 120, five).isSound();
        squares(49, 120, five).breaksOnly(Rule.R10);
    }

    /** All circles on one shelf; a diameter loses 3 mm to the rounding of the centres. */
    private static PlanAssert shelf(int widthMm, int depthMm, List<double[]> centres, double radius) {
        int diameter = (int) Math.floor(2 * radius * SIDE) - 3;
        int[][] corners = new int[centres.size()][];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new int[] {(int) Math.round(centres.get(i)[0] * SIDE - diameter / 2.0),
                (int) Math.round(centres.get(i)[1] * SIDE - diameter / 2.0)};
        }
        var problem = aProblem().store(aStore("store", AMBIENT).shelf(aShelf("shelf", widthMm, depthMm, 300)))
                .order(anOrder("A").cake("A1", "A1/hold"))
                .step(resting("A1/hold", 100).stands(round(diameter).pieces(corners.length), AMBIENT));
        var timetable = aTimetable().step("A1/hold", 0, 100);
        for (int[] corner : corners) {
            timetable.onShelf("store", "shelf", corner[0], corner[1]);
        }
        return assertThat(problem.build(), timetable.made("A", 100, 100, 2780, 0).build());
    }

    /** Each square is side, x and y in cm; the shelf is in mm. */
    private static PlanAssert squares(int widthMm, int depthMm, int[][] squares) {
        var problem = aProblem().store(aStore("store", AMBIENT).shelf(aShelf("shelf", widthMm, depthMm, 300)));
        var timetable = aTimetable();
        for (int[] square : squares) {
            String cake = "A" + square[0];
            problem.order(anOrder(cake).cake(cake + "c", cake + "c/hold"))
                    .step(resting(cake + "c/hold", 100).stands(FormBuilder.box(square[0] * 10, square[0] * 10), AMBIENT));
            timetable.step(cake + "c/hold", 0, 100).onShelf("store", "shelf", square[1] * 10, square[2] * 10)
                    .made(cake, 100, 100, 2780, 0);
        }
        return assertThat(problem.build(), timetable.build());
    }

    private static Map<Integer, List<double[]>> centres() {
        Map<Integer, List<double[]>> all = new LinkedHashMap<>();
        List<double[]> current = new ArrayList<>();
        for (String word : CENTRES.strip().split("\\s+")) {
            if (word.endsWith(":")) {
                current = new ArrayList<>();
                all.put(Integer.parseInt(word.substring(0, word.length() - 1)), current);
            } else {
                String[] xy = word.split(",");
                current.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
            }
        }
        return all;
    }
}
