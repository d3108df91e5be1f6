package crumbclock.app.replan;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What no plan from now on can be better than that does the same work: what has begun stays as it happened, and what is made
 * again is given.
 */
final class DayBound {

    /** So that no place is kept free for a stay that goes on: a bound must not know more than the rules do. */
    private static final int NO_ROOM = -1_000_000;

    private DayBound() {
    }

    /**
     * @param whole     with all records
     * @param timetable of the plan
     * @return empty when what happened has broken a rule: then nothing can be proven from the rules
     */
    static Optional<LowerBound> of(Problem whole, Map<String, Happened> happened, int now, Timetable timetable, boolean brokenInFact) {
        if (brokenInFact) {
            return Optional.empty();
        }
        Map<String, Happened> byNow = new LinkedHashMap<>();
        happened.forEach((id, one) -> byNow.put(id, one.open() ? new Happened(one.start(), Math.max(now, one.start() + putIn(whole, id)), true) : one));
        var plan = new OldPlan(timetable);
        Problem rest = new RestProblem(whole, plan, plan, byNow, now, List.of(), NO_ROOM).problem();
        Set<String> made = new LinkedHashSet<>();
        timetable.outcomes().stream().filter(Outcome::possible).forEach(outcome -> made.add(outcome.orderId()));
        return Optional.of(Bound.of(rest, made));
    }

    private static int putIn(Problem whole, String id) {
        return whole.steps().stream().filter(step -> step.id().equals(id)).mapToInt(Step::putInMinutes).findFirst().orElse(0);
    }
}
