package crumbclock.rules;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.OrderBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R16. */
class HandOverRulesTest {

    @Test
    void should_have_somebody_who_hands_over() {
        check(HandOverRules::r16Placed).on(order(pickedUp()), boxed(100).made("A", 100, 200, 100, 0)).costs(1)
                .because(new Cause(List.of("A"), "", new Span(300, 300),
                        "nobody hands over order A: A/hand is not placed"));
        check(HandOverRules::r16Placed).on(order(pickedUp()), handed(100, 200).made("A", 100, 200, 100, 0)).costs(0);
        check(HandOverRules::r16Placed).on(order(anOrder("A").setAsideBy(300)), boxed(100).made("A", 100, 100, 200, 0)).costs(0);
        check(HandOverRules::r16Placed).on(order(pickedUp()), aTimetable().notPossible("A", "no bowl")).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"199, 1", "200, 0", "201, 0"})
    void should_not_hand_over_too_early(int start, int findings) {
        check(HandOverRules::r16NotTooEarly).on(order(pickedUp()), handed(100, start).made("A", 100, start, 0, 0))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"169, 1", "170, 0"})
    void should_count_the_road_before_the_moment(int start, int findings) {
        check(HandOverRules::r16NotTooEarly)
                .on(order(anOrder("A").delivered("A/hand", 30, 200, 300)), handed(100, start).made("A", 100, 0, 0, 0))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"209, 0", "210, 0", "211, 1"})
    void should_be_finished_before_it_is_handed_over(int boxEnd, int findings) {
        check(HandOverRules::r16Finished).on(order(pickedUp()), handed(boxEnd, 210).made("A", boxEnd, 210, 0, 0))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"100, 320, 220, 20, 0", "101, 320, 220, 20, 1", "100, 319, 220, 20, 1", "100, 320, 221, 20, 1",
        "100, 320, 220, 19, 1"})
    void should_tell_the_times_as_they_are(int ready, int hand, int buffer, int late, int findings) {
        check(HandOverRules::r16TimesTold)
                .on(order(pickedUp()), handed(100, 320).made("A", ready, hand, buffer, late)).costs(findings);
    }

    @Test
    void should_tell_the_times_of_a_delivery_and_of_an_order_set_aside() {
        check(HandOverRules::r16TimesTold).on(order(anOrder("A").delivered("A/hand", 30, 200, 300)),
                handed(100, 280).made("A", 100, 310, 180, 10)).costs(0);
        check(HandOverRules::r16TimesTold).on(order(anOrder("A").setAsideBy(300)),
                boxed(100).made("A", 100, 100, 200, 0)).costs(0);
        check(HandOverRules::r16TimesTold).on(order(anOrder("A").setAsideBy(300)),
                boxed(310).made("A", 310, 310, -10, 10)).costs(0);
    }

    private static OrderBuilder pickedUp() {
        return anOrder("A").pickedUp("A/hand", 200, 300);
    }

    private static ProblemBuilder order(OrderBuilder order) {
        return aProblem().order(order.cake("A1", "A1/box")).step(handsOn("A1/box", 10)).step(handsOn("A/hand", 5));
    }

    private static TimetableBuilder boxed(int end) {
        return aTimetable().step("A1/box", end - 10, end);
    }

    private static TimetableBuilder handed(int boxEnd, int start) {
        return boxed(boxEnd).step("A/hand", start, start + 5);
    }
}
