package crumbclock.search;

import crumbclock.engine.cost.Cost;
import java.util.function.BooleanSupplier;

/** Hears of the search while it runs, from more than one thread, one call at a time. */
public interface SearchListener {

    /** A listener that hears nothing and never asks to stop. */
    SearchListener SILENT = (schedules, best) -> {
    };

    /** A listener that hears nothing and ends the search when asked to, from any of its threads. */
    static SearchListener stoppedBy(BooleanSupplier stop) {
        return new SearchListener() {
            @Override
            public void improved(long schedules, Cost best) {
                // whoever only stops judges the plan by the audit, not by the way there
            }

            @Override
            public boolean stopAsked() {
                return stop.getAsBoolean();
            }
        };
    }

    /** A better plan was found: its cost, and the schedules generated so far. The first plan counts. */
    void improved(long schedules, Cost best);

    /** Asked often: whether to end now and keep the best plan so far. */
    default boolean stopAsked() {
        return false;
    }
}
