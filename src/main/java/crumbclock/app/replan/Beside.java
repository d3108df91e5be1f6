package crumbclock.app.replan;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Something that is worked out on a thread of its own, and waited for. It must share nothing that changes with what is done meanwhile.
 *
 * @param <T> what comes of it
 */
final class Beside<T> {

    private final CompletableFuture<T> future;

    private Beside(Supplier<T> work) {
        future = CompletableFuture.supplyAsync(work, task -> {
            var thread = new Thread(task, "beside");
            thread.setDaemon(true);
            thread.start();
        });
    }

    static <T> Beside<T> begin(Supplier<T> work) {
        return new Beside<>(work);
    }

    /** What came of it; what it threw is thrown here. */
    T get() {
        try {
            return future.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : failed;
        }
    }
}
