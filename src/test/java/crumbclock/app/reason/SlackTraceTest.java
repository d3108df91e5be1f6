package crumbclock.app.reason;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Wait;
import org.junit.jupiter.api.Test;

class SlackTraceTest {

    private final Problem problem = aProblem().person(aPerson("ana").onShift(0, 2880))
            .order(anOrder("A").cake("A1", "A1/box").setAsideBy(600))
            .order(anOrder("B").cake("B1", "B1/box").setAsideBy(900))
            .step(handsOn("A1/coat", 30)).step(resting("A1/chill", 60)).step(handsOn("A1/box", 10))
            .step(handsOn("B1/box", 10))
            .wait("A1/coat", "A1/chill", 0, Wait.NO_MOST).wait("A1/chill", "A1/box", 0, Wait.NO_MOST).build();

    @Test
    void stepsFollowOneAnotherBackToWhereSlackIs() {
        var timetable = aTimetable().work("A1/coat", 100, 130, "ana").step("A1/chill", 130, 190)
                .work("A1/box", 190, 200, "ana").made("A", 200, 200, 400, 0).build();

        assertThat(new SlackTrace(problem, timetable).stepsWithoutSlack("A"))
                .containsExactly("A1/coat", "A1/chill", "A1/box");
    }

    @Test
    void restThatLastsLongerThanItMustHasSlack() {
        var timetable = aTimetable().work("A1/coat", 100, 130, "ana").step("A1/chill", 130, 191)
                .work("A1/box", 191, 201, "ana").made("A", 201, 201, 399, 0).build();

        assertThat(new SlackTrace(problem, timetable).stepsWithoutSlack("A")).containsExactly("A1/box");
    }

    @Test
    void personBusyWithAnotherOrderIsFollowedThere() {
        var timetable = aTimetable().work("A1/coat", 0, 30, "ana").step("A1/chill", 30, 190)
                .work("B1/box", 180, 190, "ana").work("A1/box", 190, 200, "ana").made("A", 200, 200, 400, 0).build();

        assertThat(new SlackTrace(problem, timetable).stepsWithoutSlack("A")).containsExactly("B1/box", "A1/box");
    }

    @Test
    void recordedWorkOfNobodyKnowsWhenIsNoReason() {
        var timetable = aTimetable().work("A1/coat", 0, 30, "ana").step("A1/chill", 30, 190)
                .step("B1/box", 190, 190).by("ana").work("A1/box", 190, 200, "ana").made("A", 200, 200, 400, 0).build();

        assertThat(new SlackTrace(problem, timetable).stepsWithoutSlack("A")).containsExactly("A1/box");
    }

    @Test
    void orderThatIsNotInTheTimetableHasNone() {
        assertThat(new SlackTrace(problem, aTimetable().build()).stepsWithoutSlack("A")).isEmpty();
    }
}
