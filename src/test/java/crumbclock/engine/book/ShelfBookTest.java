package crumbclock.engine.book;

import static crumbclock.fixture.FormBuilder.box;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.Placement;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Task;
import crumbclock.fixture.FormBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.ShelfBuilder;
import crumbclock.fixture.StepBuilder;
import crumbclock.fixture.StoreBuilder;
import crumbclock.units.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfBookTest {

    private final Journal journal = new Journal();
    private CompiledProblem compiled;
    private ShelfBook book;

    private void given(StoreBuilder store, StepBuilder... stays) {
        ProblemBuilder problem = aProblem().store(store);
        for (StepBuilder stay : stays) {
            problem.step(stay);
        }
        compiled = CompiledProblem.of(problem.build(), false);
        book = new ShelfBook(compiled, journal);
        book.reset();
    }

    private static StepBuilder stay(String id, FormBuilder form) {
        return resting(id, 60).stands(form, PlaceKind.FRIDGE);
    }

    private boolean isFree(int stay, int from, int until) {
        return book.blockedUntil(compiled.tasks[stay], from, until) < 0;
    }

    private void put(int stay, int from, int until) {
        assertThat(isFree(stay, from, until)).isTrue();
        book.book(compiled.tasks[stay]);
    }

    @ParameterizedTest
    @CsvSource({"410, true", "409, false"})
    void should_keep_exactly_the_gap_between_two_items(int width, boolean expected) {
        given(aFridge("fridge").gaps(0, 10).shelf(aShelf("s", width, 200, 150)), stay("c/a", box(200, 200)),
                stay("c/b", box(200, 200)));
        put(0, 100, 200);

        assertThat(isFree(1, 100, 200)).isEqualTo(expected);
        assertThat(isFree(1, 199, 300)).isEqualTo(expected);
        assertThat(isFree(1, 200, 300)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"210, true", "209, false"})
    void should_keep_the_gap_to_the_walls(int width, boolean expected) {
        given(aFridge("fridge").gaps(5, 0).shelf(aShelf("s", width, 210, 150)), stay("c/a", round(200)));

        assertThat(isFree(0, 100, 200)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"100, true", "101, false"})
    void should_stand_under_the_clear_height(int height, boolean expected) {
        given(aFridge("fridge").shelf(aShelf("s", 300, 300, 100)), stay("c/a", box(200, 200).tall(height)));

        assertThat(isFree(0, 100, 200)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"25, true", "26, false"})
    void should_let_nothing_in_that_is_too_warm(int warmth, boolean expected) {
        given(aFridge("fridge").takesUpTo(25).shelf(aShelf("s", 300, 300, 100)), stay("c/a", box(200, 200).warm(warmth)));

        assertThat(isFree(0, 100, 200)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"1000, true", "1001, false"})
    void should_bear_no_more_than_the_shelf_can(int second, boolean expected) {
        given(aFridge("fridge").shelf(aShelf("s", 900, 300, 150).bears(2500).goods("milk", 0, 0, 100, 100, 500, new Span(0, 1000))),
                stay("c/a", box(200, 200).weighing(1000)), stay("c/b", box(200, 200).weighing(second)));
        put(0, 100, 200);

        assertThat(isFree(1, 150, 250)).isEqualTo(expected);
        assertThat(isFree(1, 200, 250)).isTrue();
    }

    @Test
    void should_stand_beside_household_goods_only_while_they_are_there() {
        given(aFridge("fridge").shelf(aShelf("s", 300, 200, 150).goods("milk", 0, 0, 101, 200, 500, new Span(100, 200))),
                stay("c/a", box(200, 200)));

        assertThat(isFree(0, 50, 100)).isTrue();
        assertThat(isFree(0, 50, 101)).isFalse();
        assertThat(isFree(0, 200, 250)).isTrue();
        assertThat(book.blockedUntil(compiled.tasks[0], 50, 101)).isEqualTo(200);
    }

    @Test
    void should_be_closed_while_the_store_is_away() {
        given(aFridge("fridge").away(100, 200).shelf(aShelf("s", 300, 200, 150)), stay("c/a", box(100, 100)));

        assertThat(isFree(0, 50, 100)).isTrue();
        assertThat(isFree(0, 199, 250)).isFalse();
        assertThat(isFree(0, 200, 250)).isTrue();
    }

    @Test
    void should_spread_the_pieces_of_one_stay_over_shelves() {
        // given room for two boxes on each of two shelves
        given(aFridge("fridge").shelf(aShelf("top", 400, 200, 100)).shelf(aShelf("bottom", 400, 200, 100)),
                stay("c/four", box(200, 200).pieces(4)), stay("c/five", box(200, 200).pieces(5)));

        assertThat(isFree(1, 100, 200)).isFalse();
        put(0, 100, 200);
        assertThat(book.placements()).extracting(Placement::shelfId).containsExactly("top", "top", "bottom", "bottom");
        assertThat(book.placements()).extracting(Placement::piece).containsExactly(0, 1, 2, 3);
    }

    /** Two levels: what is 150 mm tall has to stand below, what is 90 mm tall stands on top as long as there is room. */
    private void givenTwoLevels(StepBuilder first, StepBuilder second) {
        given(aFridge("fridge").shelf(aShelf("top", 500, 300, 100)).shelf(aShelf("bottom", 500, 300, 200)), first, second);
    }

    private static FormBuilder low() {
        return box(200, 200).tall(90);
    }

    private static FormBuilder tall() {
        return box(200, 200).tall(150);
    }

    @Test
    void should_keep_an_open_item_from_under_an_open_one_that_it_must_not_meet() {
        givenTwoLevels(stay("c/nuts", low().open()).contains("nuts"), stay("c/free", tall().open()).freeFrom("nuts"));
        put(0, 100, 200);

        assertThat(isFree(1, 150, 250)).isFalse();
        assertThat(isFree(1, 200, 250)).isTrue();
    }

    @Test
    void should_let_it_stand_above() {
        givenTwoLevels(stay("c/nuts", tall().open()).contains("nuts"), stay("c/free", low().open()).freeFrom("nuts"));
        put(0, 100, 200);

        assertThat(isFree(1, 150, 250)).isTrue();
    }

    @Test
    void should_not_put_what_harms_above_or_beside_what_must_be_free_from_it() {
        givenTwoLevels(stay("c/free", tall().open()).freeFrom("nuts"), stay("c/nuts", low().open()).contains("nuts"));
        put(0, 100, 200);

        assertThat(isFree(1, 150, 250)).isFalse();
        assertThat(isFree(1, 200, 250)).isTrue();
    }

    @Test
    void should_not_mind_when_either_is_covered() {
        givenTwoLevels(stay("c/nuts", low()).contains("nuts"), stay("c/free", tall().open()).freeFrom("nuts"));
        put(0, 100, 200);
        assertThat(isFree(1, 150, 250)).isTrue();

        givenTwoLevels(stay("c/nuts", low().open()).contains("nuts"), stay("c/free", tall()).freeFrom("nuts"));
        put(0, 100, 200);
        assertThat(isFree(1, 150, 250)).isTrue();
    }

    @Test
    void should_keep_a_shelf_set_aside_from_what_it_must_not_meet() {
        ShelfBuilder aside = aShelf("aside", 300, 300, 150).freeFrom("nuts");
        given(aFridge("fridge").shelf(aside), stay("c/nuts", low()).contains("nuts"), stay("c/egg", low()).contains("egg"));

        assertThat(isFree(0, 100, 200)).isFalse();
        assertThat(isFree(1, 100, 200)).isTrue();
    }

    @Test
    void should_cut_an_open_ended_stay_and_take_that_back() {
        // given
        given(aFridge("fridge").shelf(aShelf("s", 200, 200, 150)), stay("c/a", box(200, 200)), stay("c/b", box(200, 200)));
        Task first = compiled.tasks[0];
        put(0, 100, 2880);
        assertThat(isFree(1, 300, 400)).isFalse();
        int mark = journal.mark();

        // when
        book.shorten(first, 300);

        // then
        assertThat(isFree(1, 300, 400)).isTrue();
        assertThat(isFree(1, 299, 400)).isFalse();
        journal.undoTo(mark);
        assertThat(isFree(1, 300, 400)).isFalse();
        journal.undoTo(0);
        assertThat(book.placements()).isEmpty();
        assertThat(isFree(1, 100, 400)).isTrue();
    }
}
