package crumbclock.search;

import crumbclock.engine.cost.Cost;

/** Hears of the search while it runs, from more than one thread, one call at a time. */
public interface SearchListener {

    /** A listener that hears nothing and never asks to stop. */
    SearchListener SILENT = (schedules, best) -> {
    };

    /** A better plan was found: its cost, and the schedules generated so far. The first plan counts. */
    void improved(long schedules, Cost best);

    /** Asked often: whether to end now and keep the best plan so far. */
    default boolean stopAsked() {
        return false;
    }
}
