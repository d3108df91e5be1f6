package crumbclock.app.reason;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.search.SearchResult;

/**
 * Short searches that end by steps, so that the same plan always has the same reasons. Their work is counted and
 * limited: a large kitchen where everything is late gets rough reasons rather than none for minutes.
 */
final class SmallSearch {

    /** Steps of search × steps of the problem: small problems are looked at harder. */
    private static final int EFFORT = 2_000;

    private final long seed;
    private long placingsLeft;

    /** @param mostPlacings steps placed in all searches, roughly: one search always runs to its end */
    SmallSearch(long seed, long mostPlacings) {
        this.seed = seed;
        this.placingsLeft = mostPlacings;
    }

    /** Whether no more searches are to be made. */
    boolean isExhausted() {
        return placingsLeft <= 0;
    }

    Timetable timetable(Problem problem) {
        int size = Math.max(1, problem.steps().size());
        SearchResult result = PlanSearch.search(problem, SearchLimits.ofSteps(seed, Math.max(1, EFFORT / size)),
                SearchListener.SILENT);
        placingsLeft -= result.schedules() * size;
        return result.timetable();
    }

    /** False, too, when there is no time left to find out. */
    boolean isOnTime(Problem problem, String orderId) {
        return !isExhausted() && timetable(problem).outcomes().stream()
                .anyMatch(outcome -> outcome.orderId().equals(orderId) && isOnTime(outcome));
    }

    static boolean isOnTime(Outcome outcome) {
        return outcome.possible() && outcome.lateMinutes() == 0;
    }
}
