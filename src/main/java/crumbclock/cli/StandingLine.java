package crumbclock.cli;

import java.io.PrintStream;
import java.util.function.LongFunction;

/** Tells how things stand, a line every two seconds; on a terminal one line that is written over, and wiped out at the end. */
final class StandingLine implements AutoCloseable {

    private static final long EVERY_NANOS = 2_000_000_000L;
    private static final long NANOS = 1_000_000_000L;
    private static final int LONGEST = 110;

    private final PrintStream err;
    private final boolean terminal;
    private final boolean quiet;
    private final long began = System.nanoTime();
    private long toldAt = began;
    private int lastLength;

    /** @param quiet says nothing at all */
    StandingLine(Surroundings surroundings, boolean quiet) {
        this.err = surroundings.err();
        this.terminal = surroundings.terminal();
        this.quiet = quiet;
    }

    /** Says it when it is time again. */
    void tell(LongFunction<String> textAfterSeconds) {
        long now = System.nanoTime();
        if (!quiet && now - toldAt >= EVERY_NANOS) {
            toldAt = now;
            show(textAfterSeconds.apply((now - began) / NANOS));
        }
    }

    /** Says it at once. */
    void show(String text) {
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
    public void close() {
        if (terminal && lastLength > 0) {
            err.print("\r" + " ".repeat(lastLength) + "\r");
            err.flush();
        }
    }
}
