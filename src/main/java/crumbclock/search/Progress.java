package crumbclock.search;

import crumbclock.engine.cost.Cost;

/** Passes on to the listener what is better than all that any of the searches has found. */
final class Progress {

    private final SearchListener listener;
    private Cost best;

    Progress(SearchListener listener) {
        this.listener = listener;
    }

    synchronized void improved(long schedules, Cost cost) {
        if (best == null || cost.compareTo(best) < 0) {
            best = cost;
            listener.improved(schedules, cost);
        }
    }

    boolean stopAsked() {
        return listener.stopAsked();
    }
}
