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

/** Lateness, W01 and W02, with the default weights: 100 a late minute, 5,000 a late order, 4 and 1 for the wishes. */
class OrderWishesTest {

    @ParameterizedTest
    @CsvSource({"299, 0", "300, 0", "301, 5300", "310, 8000"})
    void should_cost_late_minutes_by_importance(int start, long points) {
        check(OrderWishes::lateOrder).on(order(pickedUp().importance(3)), handed(100, start)).costs(points);
    }

    @Test
    void should_say_how_late_it_is() {
        check(OrderWishes::lateOrder).on(order(pickedUp()), handed(100, 310))
                .because(new Cause(List.of("A"), "", new Span(300, 300), "order A is 10 min late"));
    }

    @ParameterizedTest
    @CsvSource({"300, 0", "301, 5100"})
    void should_be_late_when_set_aside_too_late(int end, long points) {
        check(OrderWishes::lateOrder)
                .on(order(anOrder("A").setAsideBy(300)), aTimetable().step("A1/box", end - 10, end).made("A", 0, 0, 0, 0))
                .costs(points);
    }

    @Test
    void should_cost_most_what_is_not_possible() {
        check(OrderWishes::lateNotPossible)
                .on(order(pickedUp().importance(2)), aTimetable().notPossible("A", "no bowl")).costs(200_000_000L);
        check(OrderWishes::lateNotPossible).on(order(pickedUp()), handed(100, 400)).costs(0);
        check(OrderWishes::lateOrder).on(order(pickedUp()), aTimetable().notPossible("A", "no bowl")).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"169, 0", "170, 0", "171, 4", "210, 160"})
    void should_wish_for_a_buffer(int boxEnd, long points) {
        // a buffer of 30 is wished for, the hand-over starts at 200: below nothing it counts in full
        check(OrderWishes::w01Buffer).on(order(pickedUp().bufferWish(30)), handed(boxEnd, 200)).costs(points);
    }

    @ParameterizedTest
    @CsvSource({"270, 0", "271, 4"})
    void should_wish_for_a_buffer_before_the_drivers_come(int boxEnd, long points) {
        check(OrderWishes::w01Buffer).on(order(anOrder("A").setAsideBy(300).bufferWish(30)),
                aTimetable().step("A1/box", boxEnd - 10, boxEnd).made("A", 0, 0, 0, 0)).costs(points);
    }

    @ParameterizedTest
    @CsvSource({"199, 0", "200, 0", "201, 1", "210, 10"})
    void should_wish_for_freshness(int start, long points) {
        check(OrderWishes::w02Freshness)
                .on(order(pickedUp()).freshness("A1/box", "A", 100), handed(100, start)).costs(points);
    }

    @Test
    void should_count_freshness_to_the_moment_and_for_orders_set_aside_to_the_end() {
        check(OrderWishes::w02Freshness).on(order(anOrder("A").delivered("A/hand", 30, 0, 300)).freshness("A1/box", "A", 100),
                handed(100, 180)).costs(10)
                .because(new Cause(List.of("A1/box", "A"), "", new Span(90, 100),
                        "A1/box ends 110 min before the hand-over; 100 are wished for at most"));
        check(OrderWishes::w02Freshness).on(order(anOrder("A").setAsideBy(300)).freshness("A1/box", "A", 100),
                aTimetable().step("A1/box", 90, 100).made("A", 0, 0, 0, 0)).costs(100);
    }

    private static OrderBuilder pickedUp() {
        return anOrder("A").pickedUp("A/hand", 0, 300);
    }

    private static ProblemBuilder order(OrderBuilder order) {
        return aProblem().order(order.cake("A1", "A1/box")).step(handsOn("A1/box", 10)).step(handsOn("A/hand", 5));
    }

    private static TimetableBuilder handed(int boxEnd, int start) {
        return aTimetable().step("A1/box", boxEnd - 10, boxEnd).step("A/hand", start, start + 5).made("A", 0, 0, 0, 0);
    }
}
