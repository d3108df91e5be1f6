package crumbclock.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while a search runs: the search is asked to end, and the Java machine waits until the best plan so far is
 * written. Without a search Ctrl-C ends the program at once, as usual.
 */
final class Interrupt {

    /** Time enough to explain and write any plan; afterwards the user's wish to end counts for more. */
    private static final long MOST_SECONDS = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private volatile boolean asked;

    boolean isAsked() {
        return asked;
    }

    /** From now on the end of the program waits for {@link #finish()}. */
    void watch() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::ask, "ask the search to end"));
    }

    /** All is written; the program may end. */
    void finish() {
        finished.countDown();
    }

    /** Asks, and waits until the command has finished. */
    void ask() {
        asked = true;
        try {
            finished.await(MOST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
