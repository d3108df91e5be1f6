package crumbclock.search;

/**
 * When a search ends, and where it starts from. A run that ends by steps alone repeats itself; one that ends by the
 * clock need not.
 *
 * @param seed             of all random choices
 * @param mostSteps        orders of work tried by each direction, at least 1; {@link Long#MAX_VALUE} for no limit
 * @param mostMillis       whole search; {@link Long#MAX_VALUE} for no limit
 * @param unimprovedMillis without a better plan, in plans without a late order; {@link Long#MAX_VALUE} for no limit
 */
public record SearchLimits(long seed, long mostSteps, long mostMillis, long unimprovedMillis) {

    public static SearchLimits ofSteps(long seed, long steps) {
        return new SearchLimits(seed, steps, Long.MAX_VALUE, Long.MAX_VALUE);
    }

    public static SearchLimits ofMillis(long seed, long millis, long unimprovedMillis) {
        return new SearchLimits(seed, Long.MAX_VALUE, millis, unimprovedMillis);
    }

    public boolean byClock() {
        return mostMillis != Long.MAX_VALUE || unimprovedMillis != Long.MAX_VALUE;
    }
}
