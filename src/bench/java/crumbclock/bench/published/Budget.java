package crumbclock.bench.published;

import crumbclock.bench.Stopwatch;
import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchListener;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Ends a search by schedules or by the clock, and when a value is reached that cannot be bettered. The one place that
 * counts schedules, by how often the search asks, before each, whether to stop: of all searches that run side by side.
 */
final class Budget implements SearchListener {

    private final long mostSchedules;
    private final double mostSeconds;
    private final long goal;
    private final AtomicLong schedules = new AtomicLong();
    private final Stopwatch watch = new Stopwatch();
    private volatile Cost incumbent;

    private Budget(long mostSchedules, double mostSeconds, long goal) {
        this.mostSchedules = mostSchedules;
        this.mostSeconds = mostSeconds;
        this.goal = goal;
    }

    /** So many schedules in all, however long they take. */
    static Budget ofSchedules(long mostSchedules) {
        return new Budget(mostSchedules, Double.POSITIVE_INFINITY, Long.MIN_VALUE);
    }

    /** So many seconds, or until the wishes cost no more than {@code goal} points. */
    static Budget ofSeconds(double mostSeconds, long goal) {
        return new Budget(Long.MAX_VALUE, mostSeconds, goal);
    }

    @Override
    public void improved(long ofOneDirection, Cost best) {
        if (schedules.get() <= mostSchedules && watch.wallSeconds() <= mostSeconds) {
            incumbent = best;
        }
    }

    @Override
    public boolean stopAsked() {
        return schedules.incrementAndGet() > mostSchedules || watch.wallSeconds() > mostSeconds || isReached();
    }

    private boolean isReached() {
        Cost best = incumbent;
        return best != null && best.medium() == 0 && best.soft() <= goal;
    }

    /** The best within the budget; null before the first. */
    Cost incumbent() {
        return incumbent;
    }

    long schedules() {
        return schedules.get();
    }

    double seconds() {
        return watch.wallSeconds();
    }
}
