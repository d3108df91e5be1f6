package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.domain.kitchen.PlaceKind.RACK;
import static crumbclock.fixture.FormBuilder.box;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.plan.Placement;
import crumbclock.fixture.FormBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.ShelfBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R10. */
class ShelfRulesTest {

    @Test
    void should_find_a_place_for_every_piece() {
        var problem = fridge(round(200).pieces(2));

        check(ShelfRules::r10Missing).on(problem, chilled()).costs(2);
        check(ShelfRules::r10Missing).on(problem, chilled().onShelf("fridge", "top", 5, 5)).costs(1);
        check(ShelfRules::r10Missing)
                .on(problem, chilled().onShelf("fridge", "top", 5, 5).onShelf("fridge", "top", 250, 5)).costs(0);
        check(ShelfRules::r10Missing).on(problem.surface("rack", RACK, 1_000_000), chilled().onSurface("rack")).costs(0);
    }

    @Test
    void should_find_one_place_only() {
        check(ShelfRules::r10Twice).on(fridge(round(200)), chilled().onShelf("fridge", "top", 5, 5)).costs(0);
        check(ShelfRules::r10Twice).on(fridge(round(200)), chilled().onShelf("fridge", "top", 5, 5)
                .placement(new Placement("A/chill", 0, "fridge", "top", 250, 5, false, new Span(100, 200)))).costs(1);
    }

    @Test
    void should_find_placements_that_belong_to_nothing() {
        var placement = new Placement("A/chill", 0, "fridge", "top", 5, 5, false, new Span(100, 200));

        check(ShelfRules::r10Stray).on(fridge(round(200)), aTimetable().placement(placement)).costs(1);
        check(ShelfRules::r10Stray).on(fridge(round(200)), chilled().onSurface("rack").placement(placement)).costs(1);
        check(ShelfRules::r10Stray).on(fridge(round(200)), chilled().onShelf("fridge", "top", 5, 5)
                .onShelf("fridge", "top", 250, 5)).costs(1).saying("piece number 1 of a step that has 1 pieces on shelves");
    }

    @ParameterizedTest
    @CsvSource({"100, 200, 0", "99, 200, 1", "100, 199, 1"})
    void should_stay_for_the_whole_step(int from, int until, int findings) {
        check(ShelfRules::r10Stays).on(fridge(round(200)), chilled().placement(
                new Placement("A/chill", 0, "fridge", "top", 5, 5, false, new Span(from, until)))).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"fridge, top, 0", "fridge, attic, 1", "cellar, top, 1"})
    void should_stand_on_a_shelf_that_there_is(String store, String shelf, int findings) {
        check(ShelfRules::r10KnownShelf).on(fridge(round(200)), chilled().onShelf(store, shelf, 5, 5)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"5, 5, 0", "4, 5, 1", "5, 4, 1", "295, 195, 0", "296, 195, 1", "295, 196, 1"})
    void should_stand_wholly_on_the_shelf(int xMm, int yMm, int findings) {
        // a shelf of 500 x 400 mm with 5 mm to its edge, a board of 200 mm
        check(ShelfRules::r10Inside).on(fridge(round(200)), chilled().onShelf("fridge", "top", xMm, yMm)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "true, 0"})
    void should_fit_when_turned(boolean turned, int findings) {
        check(ShelfRules::r10Inside).on(fridge(box(390, 490)), chilled().placement(
                new Placement("A/chill", 0, "fridge", "top", 5, 5, turned, new Span(100, 200)))).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"299, 0", "300, 0", "301, 1"})
    void should_be_no_taller_than_the_shelf_allows(int heightMm, int findings) {
        check(ShelfRules::r10Height)
                .on(fridge(round(200).tall(heightMm)), chilled().onShelf("fridge", "top", 5, 5)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"214, 1", "215, 0", "216, 0"})
    void should_keep_the_gap_to_other_pieces(int xMm, int findings) {
        check(ShelfRules::r10Apart).on(fridge(box(200, 200).pieces(2)),
                chilled().onShelf("fridge", "top", 5, 5).onShelf("fridge", "top", xMm, 5)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"199, 1", "200, 0"})
    void should_keep_the_gap_while_both_are_there(int start, int findings) {
        check(ShelfRules::r10Apart).on(fridge(round(200)), chilled().onShelf("fridge", "top", 5, 5)
                .step("B/chill", start, 300).onShelf("fridge", "top", 5, 5)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"100, 1", "99, 0", "0, 0"})
    void should_keep_the_gap_to_goods(int goodsUntilMinusOne, int findings) {
        var shelf = aShelf("top", 500, 400, 300)
                .goods("milk", 200, 100, 100, 100, 500, new Span(0, goodsUntilMinusOne + 1))
                .goods("more milk", 210, 110, 100, 100, 500, new Span(0, 50));

        check(ShelfRules::r10Apart)
                .on(fridge(shelf, box(100, 100)), chilled().onShelf("fridge", "top", 191, 5)).costs(findings);
    }

    @Test
    void should_say_what_stands_too_close() {
        var shelf = aShelf("top", 500, 400, 300).goods("milk", 200, 100, 100, 100, 500, new Span(0, 150));

        check(ShelfRules::r10Apart).on(fridge(shelf, box(100, 100)), chilled().onShelf("fridge", "top", 191, 5))
                .because(new Cause(List.of("A/chill"), "fridge, top", new Span(100, 150),
                        "milk and A/chill are less than 10 mm apart or overlap"));
    }

    @ParameterizedTest
    @CsvSource({"3501, 0", "3500, 0", "3499, 1"})
    void should_bear_all_that_stands_on_it(int bears, int findings) {
        var shelf = aShelf("top", 500, 400, 300).bears(bears).goods("milk", 200, 100, 100, 100, 500, new Span(0, 150));

        check(ShelfRules::r10Mass).on(fridge(shelf, round(200).weighing(1500).pieces(2)),
                chilled().onShelf("fridge", "top", 5, 5).onShelf("fridge", "top", 5, 5)).costs(findings);
    }

    @Test
    void should_notice_goods_that_come_later_but_not_goods_alone() {
        var shelf = aShelf("top", 500, 400, 300).bears(2000).goods("milk", 200, 100, 100, 100, 1001, new Span(150, 160))
                .goods("crate", 200, 100, 100, 100, 5000, new Span(300, 400));

        check(ShelfRules::r10Mass).on(fridge(shelf, round(200)), chilled().onShelf("fridge", "top", 5, 5)).costs(1)
                .because(new Cause(List.of(), "fridge, top", new Span(150, 151), "2001 g stand on the shelf; it bears 2000"));
    }

    @ParameterizedTest
    @CsvSource({"0, 100, 0", "0, 101, 1", "199, 300, 1", "200, 300, 0"})
    void should_not_stand_in_a_store_that_is_away(int from, int until, int findings) {
        check(ShelfRules::r10StoreAway)
                .on(aProblem().store(aFridge("fridge").shelf(aShelf("top", 500, 400, 300)).away(from, until))
                        .step(resting("A/chill", 10).stands(round(200), FRIDGE)), chilled().onShelf("fridge", "top", 5, 5))
                .costs(findings);
    }

    private static ProblemBuilder fridge(FormBuilder form) {
        return fridge(aShelf("top", 500, 400, 300), form);
    }

    private static ProblemBuilder fridge(ShelfBuilder shelf, FormBuilder form) {
        return aProblem().store(aFridge("fridge").gaps(5, 10).shelf(shelf))
                .step(resting("A/chill", 10).stands(form, FRIDGE, RACK))
                .step(resting("B/chill", 10).stands(form, FRIDGE, RACK));
    }

    private static TimetableBuilder chilled() {
        return aTimetable().step("A/chill", 100, 200);
    }
}
