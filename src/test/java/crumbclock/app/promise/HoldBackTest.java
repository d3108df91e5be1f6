package crumbclock.app.promise;

import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PlanAssert.assertThat;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.OrderBuilder;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import org.junit.jupiter.api.Test;

/** Plans that no order of work says, in kitchens that can be worked out by hand. */
class HoldBackTest {

    private static final int CHANGES = 2000;

    /** Ada fits half an hour's work between the two halves of another, when the second half waits ten minutes longer than it must. */
    private static Problem gap() {
        return aProblem().horizon(1440).person(aPerson("ada").onShift(0, 600)).step(handsOn("A/start", 10)).step(handsOn("A/end", 10))
                .wait("A/start", "A/end", 20, 60).order(inTime("A", "A/end", 50)).step(handsOn("B/work", 30)).order(soon("B", "B/work")).build();
    }

    /** Ada alone can pipe; so it is for Bo to fill, though Ada would be through with it first. */
    private static Problem who() {
        return aProblem().horizon(1440).person(aPerson("ada").onShift(0, 600).skilledIn("piping")).person(aPerson("bo").onShift(0, 600).paceFor("filling", 1.5))
                .step(handsOn("B/fill", 10).kind("filling")).step(handsOn("B/pipe", 10).skill("piping")).step(handsOn("B/join", 10)).wait("B/fill", "B/join", 0, 10)
                .wait("B/pipe", "B/join", 0, 10).order(soon("B", "B/join")).build();
    }

    /** The one place in the fridge is free for B when A leaves it as early as the wait for Bo, who comes at 100, allows. */
    private static Problem place() {
        return aProblem().horizon(1440).person(aPerson("ada").onShift(0, 600)).person(aPerson("bo").onShift(100, 600).skilledIn("piping"))
                .store(aFridge("fridge").shelf(aShelf("only", 300, 300, 250)))
                .step(handsOn("A/coat", 10).notBefore(30)).step(resting("A/chill", 20, 60).stands(round(250), PlaceKind.FRIDGE)).wait("A/coat", "A/chill", 0, 10)
                .step(handsOn("A/pipe", 10).skill("piping")).wait("A/chill", "A/pipe", 0, 30).order(inTime("A", "A/pipe", 110))
                .step(handsOn("B/coat", 10).notBefore(45)).step(resting("B/chill", 30, 60).stands(round(250), PlaceKind.FRIDGE))
                .wait("B/coat", "B/chill", 0, 10).step(handsOn("B/wrap", 10)).wait("B/chill", "B/wrap", 0, 10).order(soon("B", "B/wrap")).build();
    }

    private static OrderBuilder inTime(String cake, String finish, int until) {
        return anOrder("o" + cake).cake(cake, finish).setAsideBy(until).importance(1000);
    }

    private static OrderBuilder soon(String cake, String finish) {
        return anOrder("o" + cake).cake(cake, finish).setAsideBy(1);
    }

    private static Timetable start(Problem problem) {
        return PlanSearch.search(problem, SearchLimits.ofSteps(1, 300), SearchListener.SILENT).timetable();
    }

    private static int ready(Timetable timetable, String orderId) {
        return timetable.outcomes().stream().filter(one -> one.orderId().equals(orderId)).mapToInt(Outcome::readyMinute).findFirst().orElseThrow();
    }

    private static void assertReadyOfB(Problem problem, int byOrderAlone, int heldBack) {
        assertThat(readyOfB(problem, 0)).as("as the order of work has it").isEqualTo(byOrderAlone);
        assertThat(readyOfB(problem, CHANGES)).isEqualTo(heldBack);
    }

    private static int readyOfB(Problem problem, int changes) {
        Timetable found = HoldBack.search(problem, start(problem), 1, changes, () -> false).orElseThrow();
        assertThat(problem, found).isSound();
        return ready(found, "oB");
    }

    @Test
    void should_let_a_step_wait_so_that_another_fits_in_before_it() {
        assertReadyOfB(gap(), 70, 40);
    }

    @Test
    void should_let_somebody_do_it_who_is_not_through_first() {
        assertReadyOfB(who(), 30, 25);
    }

    @Test
    void should_free_a_place_as_early_as_a_wait_allows() {
        assertReadyOfB(place(), 140, 110);
    }

    @Test
    void should_find_the_same_with_the_same_seed() {
        assertThat(HoldBack.search(place(), start(place()), 7, 500, () -> false)).isEqualTo(HoldBack.search(place(), start(place()), 7, 500, () -> false));
    }

    @Test
    void should_keep_what_it_began_with_when_it_is_stopped_at_once() {
        Timetable begun = start(gap());

        assertThat(HoldBack.search(gap(), begun, 1, CHANGES, () -> true).orElseThrow().steps()).hasSameSizeAs(begun.steps());
    }
}
