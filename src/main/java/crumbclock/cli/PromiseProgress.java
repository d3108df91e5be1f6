package crumbclock.cli;

import crumbclock.app.promise.PromiseListener;
import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchListener;
import java.io.PrintStream;

/** Tells what is being looked for, a line every few seconds; on a terminal one line that is written over. */
final class PromiseProgress implements PromiseListener, AutoCloseable {

    private static final long EVERY_NANOS = 2_000_000_000L;
    private static final int LONGEST = 110;

    private final PrintStream err;
    private final boolean terminal;
    private final boolean quiet;
    private final Interrupt interrupt;
    private final long began = System.nanoTime();
    private long toldAt = began;
    private String what = "the plan without the new order";
    private int lastLength;

    PromiseProgress(Surroundings surroundings, boolean quiet) {
        this.err = surroundings.err();
        this.terminal = surroundings.terminal();
        this.interrupt = surroundings.interrupt();
        this.quiet = quiet;
    }

    /** For the plan without the new order. */
    SearchListener ofBase() {
        return new SearchListener() {
            @Override
            public void improved(long schedules, Cost best) {
                // the time that passes is told, how good the plan is comes with it
            }

            @Override
            public boolean stopAsked() {
                return PromiseProgress.this.stopAsked();
            }
        };
    }

    @Override
    public synchronized void looking(String next, int done, int about) {
        what = done + " of about " + about + " done; " + next;
    }

    @Override
    public synchronized boolean stopAsked() {
        long at = System.nanoTime();
        if (!quiet && at - toldAt >= EVERY_NANOS) {
            toldAt = at;
            tell("looking, " + (at - began) / 1_000_000_000L + " s: " + what);
        }
        return interrupt.isAsked();
    }

    private void tell(String text) {
        if (!terminal) {
            err.println(text);
            return;
        }
        String line = text.length() > LONGEST ? text.substring(0, LONGEST - 1) + "…" : text;
        err.print("\r" + line + " ".repeat(Math.max(0, lastLength - line.length())));
        err.flush();
        lastLength = line.length();
    }

    @Override
    public synchronized void close() {
        if (terminal && lastLength > 0) {
            err.print("\r" + " ".repeat(lastLength) + "\r");
            err.flush();
        }
    }
}
