package crumbclock.engine.shelf;

import static crumbclock.engine.shelf.PackingAssert.assertThatPacking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackerTest {
    private static final int MOST_NODES = 100_000;
    private final Packer packer = new Packer();

    /**
     * Largest radius of n equal circles in a unit square: E. Specht, Packomania, "Circles in the unit square". At 5 % and at
     * 1 % under it they are placed on a square shelf of 10,000 mm.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 0.292893218813", "3, 0.254333095030", "4, 0.25", "5, 0.207106781187", "6, 0.187680601147",
            "7, 0.174457630187", "8, 0.170540688701", "9, 0.166666666667", "10, 0.148204322565"})
    void should_place_circles_a_little_under_the_best_known_radius(int n, double bestRadius) {
        List<Bay> square = List.of(new Bay(10_000, 10_000));
        for (double share : new double[] {0.95, 0.99}) {
            List<Piece> circles = circles(n, (int) Math.floor(share * bestRadius * 20_000));

            assertThatPacking(packer.pack(square, circles, 0, 0, MOST_NODES)).places(square, List.of(), circles, 0, 0);
        }
    }

    /** The same source; above the best radius there is nothing to find (proven optimal for these n). */
    @ParameterizedTest
    @CsvSource({"1, 0.5", "2, 0.292893218813", "3, 0.254333095030", "4, 0.25", "5, 0.207106781187", "6, 0.187680601147",
            "7, 0.174457630187", "8, 0.170540688701", "9, 0.166666666667", "10, 0.148204322565"})
    void should_never_place_circles_above_the_best_known_radius(int n, double bestRadius) {
        List<Piece> circles = circles(n, (int) Math.ceil(1.001 * bestRadius * 20_000));

        assertThatPacking(packer.pack(List.of(new Bay(10_000, 10_000)), circles, 0, 0, MOST_NODES)).isEmpty();
        assertThat(packer.gaveUp()).isFalse();
    }

    /** 7 unit circles need a square of side 4 + √3 = 5.7320508 (Packomania), so 7 boards of 200 mm need 573.21 mm. */
    @ParameterizedTest
    @CsvSource({"573, false", "574, true"})
    void should_place_seven_boards_on_the_least_whole_square(int side, boolean expected) {
        List<Bay> square = List.of(new Bay(side, side));
        Optional<List<Spot>> spots = packer.pack(square, circles(7, 200), 0, 0, MOST_NODES);

        if (expected) {
            assertThatPacking(spots).places(square, List.of(), circles(7, 200), 0, 0);
        } else {
            assertThatPacking(spots).isEmpty();
        }
    }

    /** Squares 18, 15, 14, 10, 9, 8, 7, 4, 1 tile 33 × 32 without waste: Z. Moroń, 1925. */
    @Test
    void should_tile_the_squared_rectangle_of_moron() {
        List<Piece> squares = squares(18, 15, 14, 10, 9, 8, 7, 4, 1);
        List<Bay> bay = List.of(new Bay(33, 32));

        assertThatPacking(packer.pack(bay, squares, 0, 0, MOST_NODES)).places(bay, List.of(), squares, 0, 0);
        assertThatPacking(packer.pack(List.of(new Bay(33, 31)), squares, 0, 0, MOST_NODES)).isEmpty();
    }

    /** Least side of a square that holds squares of side 1 to n: OEIS A005842. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 3", "3, 5", "4, 7", "5, 9", "6, 11", "7, 13", "8, 15"})
    void should_place_squares_one_to_n(int n, int side) {
        List<Piece> squares = squares(IntStream.rangeClosed(1, n).toArray());
        List<Bay> bay = List.of(new Bay(side, side));

        assertThatPacking(packer.pack(bay, squares, 0, 0, MOST_NODES)).places(bay, List.of(), squares, 0, 0);
    }

    /** The same source, one less: the whole tree is searched. */
    @ParameterizedTest
    @CsvSource({"2, 2", "3, 4", "4, 6", "5, 8", "6, 10"})
    void should_not_place_squares_one_to_n_in_a_square_one_less(int n, int side) {
        List<Piece> squares = squares(IntStream.rangeClosed(1, n).toArray());

        assertThatPacking(packer.pack(List.of(new Bay(side, side)), squares, 0, 0, MOST_NODES)).isEmpty();
        assertThat(packer.gaveUp()).isFalse();
    }

    /**
     * Round pans on oven racks, 15 mm to the walls and 20 mm apart; counts from geometry, no source. Pan sizes are outside
     * measures of 6, 8, 9 and 10 inch pans (common practice, no source). 10 pans of 165 mm fit only in an uneven arrangement.
     */
    @ParameterizedTest
    @CsvSource({"216, 460, 360, 2", "216, 610, 405, 3", "216, 735, 540, 6", "216, 490, 350, 2", "165, 460, 360, 3",
            "165, 610, 405, 6", "165, 735, 540, 10", "242, 460, 360, 1", "242, 610, 405, 2", "242, 735, 540, 5",
            "267, 460, 360, 1", "267, 610, 405, 2", "267, 735, 540, 3"})
    void should_place_round_pans_on_a_rack(int diameter, int rackWidth, int rackDepth, int most) {
        List<Bay> rack = List.of(new Bay(rackWidth, rackDepth));
        List<Piece> pans = circles(most, diameter);

        assertThatPacking(packer.pack(rack, pans, 20, 15, MOST_NODES)).places(rack, List.of(), pans, 20, 15);
        assertThatPacking(packer.pack(rack, circles(most + 1, diameter), 20, 15, MOST_NODES)).isEmpty();
        assertThat(packer.gaveUp()).isFalse();
    }

    @Test
    void should_place_two_pans_side_by_side_only_when_staggered() {
        // given two 216 mm pans on a rack too narrow for them in a row: 15 + 216 + 20 + 216 + 15 = 482 mm
        Optional<List<Spot>> spots = packer.pack(List.of(new Bay(460, 360)), circles(2, 216), 20, 15, MOST_NODES);

        // then one stands at the back left and one at the right, forward by 100, the first with 214² + y² >= 236²
        assertThat(spots).isPresent();
        assertThat(spots.orElseThrow()).containsExactlyInAnyOrder(
                new Spot(0, 15, 360 - 15 - 216, false), new Spot(0, 460 - 15 - 216, 360 - 15 - 216 - 100, false));
    }

    /** 254 + 25 + 203 = 482, by hand. */
    @ParameterizedTest
    @CsvSource({"490, true", "482, true", "481, false", "480, false"})
    void should_place_two_square_boards_beside_each_other(int shelfWidth, boolean expected) {
        List<Piece> boards = squares(203, 254);

        assertThat(packer.pack(List.of(new Bay(shelfWidth, 340)), boards, 25, 0, MOST_NODES).isPresent()).isEqualTo(expected);
    }

    @Test
    void should_spread_pieces_over_unequal_bays_and_keep_their_order() {
        List<Bay> bays = List.of(new Bay(200, 200), new Bay(460, 360), new Bay(460, 360));
        List<Piece> pieces = List.of(Piece.ofDiameter(150), new Piece(false, 330, 430, true), Piece.ofDiameter(330));

        Optional<List<Spot>> spots = packer.pack(bays, pieces, 20, 15, MOST_NODES);

        assertThatPacking(spots).places(bays, List.of(), pieces, 20, 15);
        assertThat(spots.orElseThrow()).extracting(Spot::turned).containsExactly(false, true, false);
    }

    @Test
    void should_leave_alone_what_stands_there_already() {
        List<Bay> rack = List.of(new Bay(735, 540));
        List<Standing> standing = List.of(new Standing(0, true, 15, 15, 216, 216));

        assertThatPacking(packer.pack(rack, standing, circles(5, 216), 20, 15, MOST_NODES))
                .places(rack, standing, circles(5, 216), 20, 15);
        assertThatPacking(packer.pack(rack, standing, circles(6, 216), 20, 15, MOST_NODES)).isEmpty();
    }

    @Test
    void should_stop_at_the_node_limit_and_say_so() {
        List<Piece> squares = squares(18, 15, 14, 10, 9, 8, 7, 4, 1);

        assertThatPacking(packer.pack(List.of(new Bay(33, 32)), squares, 0, 0, 100)).isEmpty();
        assertThat(packer.gaveUp()).isTrue();
        assertThat(packer.nodes()).isEqualTo(100);
    }

    @Test
    void should_see_by_area_alone_that_there_is_no_room() {
        assertThatPacking(packer.pack(List.of(new Bay(33, 31)), squares(18, 15, 14, 10, 9, 8, 7, 4, 1), 0, 0, MOST_NODES))
                .isEmpty();
        assertThat(packer.nodes()).isZero();
    }

    @Test
    void should_place_nothing_nowhere() {
        assertThat(packer.pack(List.of(), List.of(), 0, 0, 1)).contains(List.of());
        assertThatPacking(packer.pack(List.of(), circles(1, 10), 0, 0, 1)).isEmpty();
    }

    @Test
    void should_refuse_a_limit_below_one() {
        assertThatIllegalArgumentException().isThrownBy(() -> packer.pack(List.of(), List.of(), 0, 0, 0))
                .withMessage("at least 1 node: 0");
    }

    private static List<Piece> circles(int n, int diameter) {
        return Collections.nCopies(n, Piece.ofDiameter(diameter));
    }

    private static List<Piece> squares(int... sides) {
        return IntStream.of(sides).mapToObj(side -> new Piece(false, side, side, true)).toList();
    }
}
