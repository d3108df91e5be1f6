package crumbclock.cli;

import crumbclock.app.PlanSideBySide;
import crumbclock.app.PlanSideBySide.Job;
import crumbclock.engine.cost.Cost;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Tells how several searches go, a line every few seconds; on a terminal one line that is written over. */
final class SideBySideProgress implements PlanSideBySide.Listener, AutoCloseable {

    private static final long EVERY_NANOS = 2_000_000_000L;
    private static final int LONGEST = 110;

    private final PrintStream err;
    private final boolean terminal;
    private final boolean quiet;
    private final int jobs;
    private final Interrupt interrupt;
    private final long began = System.nanoTime();
    private final Map<String, String> running = new LinkedHashMap<>();
    private long toldAt = began;
    private int finished;
    private int lastLength;

    SideBySideProgress(Surroundings surroundings, boolean quiet, int jobs) {
        this.err = surroundings.err();
        this.terminal = surroundings.terminal();
        this.interrupt = surroundings.interrupt();
        this.quiet = quiet;
        this.jobs = jobs;
    }

    @Override
    public synchronized void began(Job job) {
        running.put(job.name(), "no plan yet");
    }

    @Override
    public synchronized void improved(Job job, Cost best) {
        running.put(job.name(), String.format(Locale.ROOT, "late %,d, wishes %,d points", best.medium(), best.soft()));
    }

    @Override
    public synchronized void finished(Job job) {
        running.remove(job.name());
        finished++;
    }

    @Override
    public synchronized boolean stopAsked() {
        long now = System.nanoTime();
        if (!quiet && now - toldAt >= EVERY_NANOS) {
            toldAt = now;
            tell((now - began) / 1_000_000_000L);
        }
        return interrupt.isAsked();
    }

    private void tell(long seconds) {
        String text = "comparing, " + seconds + " s: " + finished + " of " + jobs + " searches done"
                + (running.isEmpty() ? "" : "; ") + running.entrySet().stream().map(one -> one.getKey() + ": " + one.getValue()).collect(Collectors.joining("; "));
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
