package crumbclock.rules;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.problem.FixedStep;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** R17. */
class CompletenessRulesTest {

    @ParameterizedTest
    @ValueSource(strings = {"A1/box", "A/hand", "X/mix"})
    void should_place_the_steps_of_cake_hand_over_and_batch(String forgotten) {
        check(CompletenessRules::r17Missing).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17Missing).on(twoOrders(), firstMade().withoutStep(forgotten)).costs(1)
                .saying(forgotten + " is not placed, though its order is made");
    }

    @Test
    void should_miss_nothing_of_an_order_that_is_not_possible() {
        check(CompletenessRules::r17Missing)
                .on(twoOrders(), aTimetable().notPossible("A", "no bowl").notPossible("B", "no bowl")).costs(0);
    }

    @Test
    void should_place_a_step_once() {
        check(CompletenessRules::r17Twice).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17Twice).on(twoOrders(), firstMade().step("A1/box", 500, 510)).costs(1)
                .because(new Cause(List.of("A1/box"), "", new Span(0, 0), "A1/box is placed 2 times"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"B1/box", "B/hand", "Y/mix"})
    void should_place_nothing_of_an_order_that_is_not_possible(String needless) {
        check(CompletenessRules::r17Needless).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17Needless).on(twoOrders(), firstMade().step(needless, 400, 410)).costs(1);
    }

    @Test
    void should_forgive_what_has_happened_already() {
        var past = new FixedStep(new PlacedStep("B1/box", 0, 10, List.of(), List.of(), "", ""), List.of(), List.of(), List.of());

        check(CompletenessRules::r17Needless).on(twoOrders().fixed(past), firstMade().step("B1/box", 0, 10)).costs(0);
    }

    @Test
    void should_know_every_step() {
        check(CompletenessRules::r17Stray).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17Stray).on(twoOrders(), firstMade().step("Z/mix", 0, 10)).costs(1)
                .saying("Z/mix: the timetable has a step that the problem does not know");
        check(CompletenessRules::r17Stray)
                .on(twoOrders(), firstMade().touch("Z/mix", TouchEnd.PUT_IN, "ana", 0, 5)).costs(1);
        check(CompletenessRules::r17Stray)
                .on(twoOrders(), firstMade().withoutStep("A1/box").step("A1/box", 0, 100_000_001)).costs(1);
    }

    @Test
    void should_tell_of_each_order_once() {
        check(CompletenessRules::r17OrderNotTold).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17OrderNotTold).on(twoOrders(), firstMade().withoutOutcome("B")).costs(1);
        check(CompletenessRules::r17OrderToldTwice).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17OrderToldTwice).on(twoOrders(), firstMade().notPossible("B", "no oven")).costs(1);
    }

    @Test
    void should_tell_of_no_other_order() {
        check(CompletenessRules::r17UnknownOrder).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17UnknownOrder).on(twoOrders(), firstMade().notPossible("C", "no oven")).costs(1);
    }

    @Test
    void should_give_a_reason_for_what_is_not_possible() {
        check(CompletenessRules::r17NoReason).on(twoOrders(), firstMade()).costs(0);
        check(CompletenessRules::r17NoReason)
                .on(twoOrders(), firstMade().withoutOutcome("B").notPossible("B")).costs(1);
    }

    private static ProblemBuilder twoOrders() {
        return aProblem().batch("X").batch("Y")
                .order(anOrder("A").cake("A1", "A1/box", "X").pickedUp("A/hand", 0, 300))
                .order(anOrder("B").cake("B1", "B1/box", "X", "Y").pickedUp("B/hand", 0, 300))
                .step(handsOn("X/mix", 10)).step(handsOn("Y/mix", 10))
                .step(handsOn("A1/box", 10)).step(handsOn("A/hand", 5))
                .step(handsOn("B1/box", 10)).step(handsOn("B/hand", 5));
    }

    /** Order A is made with its batch X; order B, which would need Y as well, is not possible. */
    private static TimetableBuilder firstMade() {
        return aTimetable().step("X/mix", 0, 10).step("A1/box", 100, 110).step("A/hand", 200, 205)
                .made("A", 110, 200, 90, 0).notPossible("B", "no bowl");
    }
}
