package crumbclock.search;

import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The way into the search: a problem in, the best timetable found out.
 *
 * <p>Two searches run side by side: forward from the problem's start, which is good when time is short, and backward
 * from the hand-overs, which keeps cakes fresh when there is time enough. Neither always wins; the better result is kept, the forward one when
 * they are equal, so that the answer does not depend on which thread was faster.
 */
public final class PlanSearch {

    private PlanSearch() {
    }

    /**
     * Searches until a limit is reached or the listener asks to stop; always answers with a timetable, at worst one
     * in which no order is possible.
     */
    public static SearchResult search(Problem problem, SearchLimits limits, SearchListener listener) {
        Progress progress = new Progress(listener);
        DirectedSearch forward = new DirectedSearch(CompiledProblem.of(problem, false), limits, progress);
        DirectedSearch backward = new DirectedSearch(CompiledProblem.of(problem, true), limits, progress);
        forward.begin();
        backward.begin();
        CompletableFuture<Void> beside = CompletableFuture.runAsync(backward::run, task -> {
            Thread thread = new Thread(task, "backward search");
            thread.setDaemon(true);
            thread.start();
        });
        forward.run();
        try {
            beside.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : failed;
        }
        long schedules = forward.schedules() + backward.schedules();
        boolean backwardWins = backward.bestCost().compareTo(forward.bestCost()) < 0;
        return (backwardWins ? backward : forward).result(schedules);
    }
}
