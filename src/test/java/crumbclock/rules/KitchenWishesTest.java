package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.fixture.FormBuilder.box;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.problem.Weights;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W05, W06 and W07, with 60 a heat-up, 1 an oven minute, 15 for standing behind and 2 a minute to the end. */
class KitchenWishesTest {

    private static final Weights WEIGHTS =
            new Weights(100, 5000, 100_000_000, 4, 1, 1, 3, 0, 5, 3, 30, 60, 1, 15, 2, 420, 1320, 2, 20);

    @Test
    void should_wish_for_few_heat_ups_and_short_runs() {
        check(KitchenWishes::w05Oven).on(kitchen(), aTimetable()).costs(0);
        check(KitchenWishes::w05Oven).on(kitchen(), aTimetable().run("deck", 180, 100, 120, 200)).costs(160)
                .because(new Cause(List.of(), "deck", new Span(100, 200), "the oven is on at 180 °C for 100 min"));
        check(KitchenWishes::w05Oven).on(kitchen(), aTimetable().run("deck", 180, 100, 120, 200)
                .run("deck", 150, 300, 320, 401)).costs(160 + 161);
    }

    @ParameterizedTest
    @CsvSource({"99, 201, 30", "100, 201, 15", "101, 201, 15", "99, 200, 15", "100, 200, 0", "101, 199, 0",
        "0, 100, 0", "0, 101, 15", "199, 300, 15", "200, 300, 0"})
    void should_wish_for_nothing_in_front_when_going_in_or_out(int from, int until, long points) {
        // A stands behind from 100 to 200
        check(KitchenWishes::w06Behind).on(kitchen(), aTimetable().step("A/chill", 100, 200).onShelf("fridge", "top", 0, 200)
                .step("B/chill", from, until).onShelf("fridge", "top", 0, 0)).costs(points);
    }

    @ParameterizedTest
    @CsvSource({"top, 99, 0, 30", "top, 100, 0, 0", "top, 0, 200, 0", "low, 0, 0, 0"})
    void should_mind_only_what_stands_in_line_in_front(String shelf, int xMm, int yMm, long points) {
        check(KitchenWishes::w06Behind).on(kitchen(), aTimetable().step("A/chill", 100, 200).onShelf("fridge", "top", 0, 200)
                .step("B/chill", 50, 300).onShelf("fridge", shelf, xMm, yMm)).costs(points);
    }

    @Test
    void should_mind_goods_but_not_pieces_of_the_same_step() {
        check(KitchenWishes::w06Behind).on(kitchen(),
                aTimetable().step("A/chill", 1000, 1100).onShelf("fridge", "low", 0, 200)).costs(30)
                .because(new Cause(List.of("A/chill"), "fridge, low", new Span(1000, 1100),
                        "milk stands in front of A/chill when that goes in or comes out"));
        check(KitchenWishes::w06Behind).on(kitchen(), aTimetable().step("C/chill", 100, 200)
                .onShelf("fridge", "top", 0, 200).onShelf("fridge", "top", 0, 0)).costs(0);
    }

    @Test
    void should_wish_for_an_early_end() {
        check(KitchenWishes::w07End).on(kitchen(), aTimetable()).costs(0);
        check(KitchenWishes::w07End)
                .on(kitchen(), aTimetable().step("A/chill", 100, 201).step("B/chill", 50, 150)).costs(402)
                .because(new Cause(List.of(), "", new Span(201, 201), "the last step ends 201 min after the problem's start"));
    }

    private static ProblemBuilder kitchen() {
        return aProblem().weights(WEIGHTS).oven(anOven("deck"))
                .store(aFridge("fridge").shelf(aShelf("top", 500, 500, 300)).shelf(aShelf("low", 500, 500, 300)
                        .goods("milk", 0, 0, 100, 100, 500, new Span(900, 1200))))
                .step(resting("A/chill", 10).stands(box(100, 100), FRIDGE))
                .step(resting("B/chill", 10).stands(box(100, 100), FRIDGE))
                .step(resting("C/chill", 10).stands(box(100, 100).pieces(2), FRIDGE));
    }
}
