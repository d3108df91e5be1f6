package crumbclock.app.promise;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.search.SearchLimits;
import java.util.List;

/**
 * Ada works from 0 to 600. She has promised A, an hour's work that she means to do first, and is asked for B, another hour. So everything
 * can be worked out by hand.
 */
final class OneMore {

    static final SearchLimits SHORT = SearchLimits.ofSteps(1, 200);

    private OneMore() {
    }

    /** @param due until when A is wanted */
    static ProblemBuilder base(int due) {
        return aProblem().horizon(1440).person(aPerson("ada").onShift(0, 600)).step(handsOn("A/work", 60))
                .order(anOrder("oA").cake("A", "A/work").setAsideBy(due));
    }

    static Plan have(int due) {
        return plan(aTimetable().work("A/work", 0, 60, "ada").made("oA", 60, 60, due - 60, 0).build());
    }

    static Plan plan(Timetable timetable) {
        return new Plan("known", timetable, List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1));
    }

    /** @param wished until when B is wanted */
    static ProblemBuilder asked(int due, int wished) {
        return asked(due, wished, 60);
    }

    static ProblemBuilder asked(int due, int wished, int minutes) {
        return base(due).step(handsOn("B/work", minutes)).order(anOrder("oB").cake("B", "B/work").setAsideBy(wished));
    }

    static Question question(int due, int wished, Question.Help... helps) {
        return question(due, asked(due, wished).build(), helps);
    }

    static Question question(int due, Problem asked, Question.Help... helps) {
        return new Question(base(due).build(), have(due), asked, "oB", 0, List.of(helps));
    }
}
