package crumbclock.cli;

import crumbclock.app.PlanSideBySide;
import crumbclock.app.PlanSideBySide.Job;
import crumbclock.engine.cost.Cost;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Tells how several searches go. */
final class SideBySideProgress implements PlanSideBySide.Listener, AutoCloseable {

    private final StandingLine line;
    private final int jobs;
    private final Interrupt interrupt;
    private final Map<String, String> running = new LinkedHashMap<>();
    private int finished;

    SideBySideProgress(Surroundings surroundings, boolean quiet, int jobs) {
        this.line = new StandingLine(surroundings, quiet);
        this.interrupt = surroundings.interrupt();
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
        line.tell(seconds -> "comparing, " + seconds + " s: " + finished + " of " + jobs + " searches done" + (running.isEmpty() ? "" : "; ")
                + running.entrySet().stream().map(one -> one.getKey() + ": " + one.getValue()).collect(Collectors.joining("; ")));
        return interrupt.isAsked();
    }

    @Override
    public synchronized void close() {
        line.close();
    }
}
