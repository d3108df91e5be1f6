package crumbclock.cli;

import crumbclock.app.promise.PromiseListener;

/** Tells what is being looked for. */
final class PromiseProgress implements PromiseListener, AutoCloseable {

    private final StandingLine line;
    private final Interrupt interrupt;
    private String what = "the plan without the new order";

    PromiseProgress(Surroundings surroundings, boolean quiet) {
        this.line = new StandingLine(surroundings, quiet);
        this.interrupt = surroundings.interrupt();
    }

    @Override
    public synchronized void looking(String next, int done, int about) {
        what = done + " of about " + about + " done; " + next;
    }

    @Override
    public synchronized boolean stopAsked() {
        line.tell(seconds -> "looking, " + seconds + " s: " + what);
        return interrupt.isAsked();
    }

    @Override
    public synchronized void close() {
        line.close();
    }
}
