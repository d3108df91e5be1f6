package crumbclock.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;
import picocli.CommandLine.Option;

/** What all measurements share: which instances, with which seed, how many at a time, and where the tables go. */
public final class RunOptions {

    @Option(names = "--seed", defaultValue = "1", description = "Seed of all random choices (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--every", defaultValue = "1", paramLabel = "K",
            description = "Only every K-th instance, for a quick look (default: ${DEFAULT-VALUE}, all).")
    private int every;

    @Option(names = "--threads", defaultValue = "1", paramLabel = "N",
            description = "Instances at a time (default: ${DEFAULT-VALUE}). Each search itself uses two threads.")
    private int threads;

    @Option(names = "--out", paramLabel = "STEM",
            description = "Tables go to STEM.md and STEM.csv (default: reports/benchmark-SET).")
    private Path out;

    public long seed() {
        return seed;
    }

    public int everyKth() {
        return every;
    }

    /** Where the tables go, without ending. */
    public Path stem(String set) {
        return out != null ? out : Path.of("reports", "benchmark-" + set);
    }

    /** The first, the K-th after it, and so on. */
    public <T> List<T> chosen(List<T> all) {
        return IntStream.range(0, all.size()).filter(index -> index % every == 0).mapToObj(all::get).toList();
    }

    /** Measures each, so many at a time; answers in the order given. A measurement that fails ends the run. */
    public <A, B> List<B> measure(List<A> instances, Function<A, B> measurement) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            AtomicInteger done = new AtomicInteger();
            List<Future<B>> futures = new ArrayList<>();
            for (A instance : instances) {
                Callable<B> task = () -> {
                    B measured = measurement.apply(instance);
                    tell(done.incrementAndGet(), instances.size());
                    return measured;
                };
                futures.add(pool.submit(task));
            }
            List<B> measured = new ArrayList<>();
            for (Future<B> future : futures) {
                measured.add(future.get());
            }
            return measured;
        } catch (InterruptedException | ExecutionException failed) {
            throw new IllegalStateException(failed.getCause() == null ? failed : failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private static void tell(int done, int all) {
        if (done == all || done % Math.max(1, all / 20) == 0) {
            System.err.println("  " + done + " of " + all);
        }
    }
}
