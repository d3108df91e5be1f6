package crumbclock.bench.published;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.Audit;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchResult;

/**
 * One search for a published instance, checked by the audit.
 *
 * @param end       makespan in the instance's own unit of time; {@link #NONE} without a sound plan
 * @param schedules generated in all
 * @param seconds   by the clock, without the audit
 */
public record Attempt(int end, long schedules, double seconds) {

    public static final int NONE = -1;

    /** Both searches side by side, within the budget. The answer is what stood when the budget was used up. */
    static Attempt within(Problem problem, int minutesPerUnit, SearchLimits limits, Budget budget) {
        return of(PlanSearch.search(problem, limits, budget), problem, minutesPerUnit, budget);
    }

    /** The same by one search alone, whose schedules are counted one after the other. */
    static Attempt alone(Problem problem, int minutesPerUnit, SearchLimits limits, Budget budget) {
        return of(PlanSearch.alone(problem, limits, budget), problem, minutesPerUnit, budget);
    }

    private static Attempt of(SearchResult result, Problem problem, int minutesPerUnit, Budget budget) {
        double seconds = budget.seconds();
        boolean possible = result.timetable().outcomes().stream().allMatch(Outcome::possible);
        if (possible && !Audit.audit(problem, result.timetable()).isSound()) {
            throw new IllegalStateException("the audit finds faults in a plan of the search");
        }
        long minutes = budget.incumbent() == null || budget.incumbent().medium() > 0 ? -1 : budget.incumbent().soft();
        return new Attempt(minutes < 0 ? NONE : (int) (minutes / minutesPerUnit), Math.max(result.schedules(), budget.schedules()),
                seconds);
    }
}
