package crumbclock.search;

import crumbclock.engine.cost.Cost;

/**
 * Passes on to the listener what is better than all that any of the searches has found, and ends them when the listener asks
 * for it, or their time is up. The only place of the search that looks at the clock.
 */
final class Progress {

    private final SearchListener listener;
    private final boolean timed;
    private final long end;
    private Cost best;

    Progress(SearchListener listener, SearchLimits limits) {
        this.listener = listener;
        timed = limits.mostMillis() != Long.MAX_VALUE;
        end = timed ? System.nanoTime() + 1_000_000 * limits.mostMillis() : 0;
    }

    synchronized void improved(long schedules, Cost cost) {
        if (best == null || cost.compareTo(best) < 0) {
            best = cost;
            listener.improved(schedules, cost);
        }
    }

    /** Whether any of the searches has a plan that would be kept. */
    synchronized boolean hasPlan() {
        return best != null;
    }

    boolean stopAsked() {
        return listener.stopAsked() || timed && System.nanoTime() - end >= 0;
    }
}
