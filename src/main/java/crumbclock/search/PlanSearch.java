package crumbclock.search;

import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.search.model.Tactics;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/**
 * The way into the search: a problem in, the best timetable found out.
 *
 * <p>Two searches run side by side, phase by phase: forward from the problem's start, which is good when time is
 * short, and backward from the hand-overs, which keeps cakes fresh when there is time enough. Neither always wins. Where one is
 * still behind in lateness, or far behind in wishes, after the fresh starts, it gives way to a second search in the direction of the other. Searches meet
 * between phases only and ties go to the first, so that the answer does not depend on which thread was faster. A single project
 * has two searches forward, with different random choices.
 */
public final class PlanSearch {

    private PlanSearch() {
    }

    /**
     * Searches until a limit is reached or the listener asks to stop; always answers with a timetable, at worst one
     * in which no order is possible.
     */
    public static SearchResult search(Problem problem, SearchLimits limits, SearchListener listener) {
        Progress progress = new Progress(listener, limits);
        DirectedSearch first = new DirectedSearch(CompiledProblem.of(problem, false), limits, progress);
        first.begin();
        DirectedSearch second = first.tactics().forwardOnly() || progress.stopAsked() ? first.companion() : backward(problem, limits, progress, first);
        long schedules = 0;
        for (int phase = 0; phase < Tactics.phases(); phase++) {
            runBoth(first, second, phase);
            if (!Tactics.goesOn(phase + 1)) {
                // too early to tell: backward often finds its way only after some time, and then is the better one
                continue;
            }
            if (isBehind(second, first)) {
                schedules += second.schedules();
                second = first.companion();
            } else if (isBehind(first, second)) {
                schedules += first.schedules();
                first = second.companion();
            }
        }
        boolean secondWins = second.bestCost().compareTo(first.bestCost()) < 0;
        return (secondWins ? second : first).result(schedules + first.schedules() + second.schedules());
    }

    /** A search backward; where time is up before it has a plan, another one forward. */
    private static DirectedSearch backward(Problem problem, SearchLimits limits, Progress progress, DirectedSearch forward) {
        DirectedSearch backward = new DirectedSearch(CompiledProblem.of(problem, true), limits, progress);
        return backward.begin() ? backward : forward.companion();
    }

    /**
     * One search by itself, forward, on the calling thread: what published benchmarks that count schedules ask for. The step limit
     * counts what moves make; the few schedules of start orders and mending come on top.
     */
    public static SearchResult alone(Problem problem, SearchLimits limits, SearchListener listener) {
        DirectedSearch search = new DirectedSearch(CompiledProblem.of(problem, false), limits, new Progress(listener, limits));
        search.begin();
        for (int phase = 0; phase < Tactics.phases(); phase++) {
            search.run(phase);
        }
        return search.result(search.schedules());
    }

    /**
     * Behind in lateness, or far behind in wishes, or, in the same direction, at all: then it goes on from the other's
     * plan.
     */
    private static boolean isBehind(DirectedSearch search, DirectedSearch other) {
        Cost cost = search.bestCost();
        Cost best = other.bestCost();
        boolean farBehind = cost.medium() == best.medium() && cost.soft() * 5 > best.soft() * 6;
        return cost.medium() > best.medium() || farBehind
                || search.isBackward() == other.isBackward() && cost.compareTo(best) > 0;
    }

    private static void runBoth(DirectedSearch first, DirectedSearch second, int phase) {
        CompletableFuture<Void> beside = CompletableFuture.runAsync(() -> second.run(phase), task -> {
            Thread thread = new Thread(task, "second search");
            thread.setDaemon(true);
            thread.start();
        });
        first.run(phase);
        try {
            beside.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : failed;
        }
    }
}
