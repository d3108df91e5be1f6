package crumbclock.cli;

import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchListener;
import java.io.PrintStream;
import java.util.Locale;

/** Tells on a stream without a terminal how the search goes: a plain line every two seconds. */
class Progress implements SearchListener, AutoCloseable {

    private static final long EVERY_SECONDS = 2;
    private static final long NANOS = 1_000_000_000L;

    private final PrintStream err;
    private final Interrupt interrupt;
    private final long began = System.nanoTime();
    private long toldAt;
    private long schedules;
    private Cost best;

    Progress(PrintStream err, Interrupt interrupt) {
        this.err = err;
        this.interrupt = interrupt;
    }

    /**
     * What suits who watches: a bar on a terminal, lines elsewhere, nothing when quiet; each ends the search when asked.
     *
     * @param mostSeconds the whole search; below 0 when it does not end by the clock
     */
    static Progress of(Surroundings surroundings, boolean quiet, long mostSeconds) {
        Interrupt interrupt = surroundings.interrupt();
        if (quiet) {
            return quiet(interrupt);
        }
        return surroundings.terminal() ? new ProgressOnTerminal(surroundings.err(), interrupt, mostSeconds)
                : new Progress(surroundings.err(), interrupt);
    }

    private static Progress quiet(Interrupt interrupt) {
        return new Progress(null, interrupt) {
            @Override
            void tell() {
                // quiet is what was asked for
            }
        };
    }

    @Override
    public final synchronized void improved(long schedulesSoFar, Cost cost) {
        schedules = schedulesSoFar;
        best = cost;
        tell();
    }

    @Override
    public final synchronized boolean stopAsked() {
        tell();
        return interrupt.isAsked();
    }

    /** Says how things stand, at most as often as is useful. */
    void tell() {
        if (seconds() >= toldAt + EVERY_SECONDS) {
            toldAt = seconds();
            err.println("planning, " + seconds() + " s: " + standing()
                    + (best == null ? "" : String.format(Locale.ROOT, ", found at timetable %,d", schedules)));
        }
    }

    final long seconds() {
        return (System.nanoTime() - began) / NANOS;
    }

    /** How good the best plan so far is; fewer points are better. */
    final String standing() {
        return best == null ? "no plan yet" : String.format(Locale.ROOT,
                "best: late %,d, wishes %,d points", best.medium(), best.soft());
    }

    @Override
    public void close() {
        // lines are complete by themselves
    }
}
