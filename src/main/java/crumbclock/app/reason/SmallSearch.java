package crumbclock.app.reason;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;

/**
 * Short searches of a fixed number of steps, so that the same plan always has the same reasons. There are only so many
 * in all: a kitchen where everything is late gets rough reasons rather than none for minutes.
 */
final class SmallSearch {

    private static final int MOST_SEARCHES = 150;

    private final long seed;
    private final long steps;
    private int left = MOST_SEARCHES;

    SmallSearch(long seed, long steps) {
        this.seed = seed;
        this.steps = steps;
    }

    /** Whether no more searches are to be made; what is found then counts as "no help". */
    boolean isExhausted() {
        return left <= 0;
    }

    Timetable timetable(Problem problem) {
        left--;
        return PlanSearch.search(problem, SearchLimits.ofSteps(seed, steps), SearchListener.SILENT).timetable();
    }

    boolean isOnTime(Problem problem, String orderId) {
        return !isExhausted() && timetable(problem).outcomes().stream()
                .anyMatch(outcome -> outcome.orderId().equals(orderId) && isOnTime(outcome));
    }

    static boolean isOnTime(Outcome outcome) {
        return outcome.possible() && outcome.lateMinutes() == 0;
    }
}
