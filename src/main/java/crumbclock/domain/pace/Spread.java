package crumbclock.domain.pace;

import java.util.Collection;
import java.util.List;

/**
 * The middle of some figures, and between which two the middle half of them lies: a few odd ones among many move neither far.
 *
 * @param lower  first quartile
 * @param median middle
 * @param upper  third quartile
 * @param seen   how many figures, at least 1
 */
public record Spread(double lower, double median, double upper, int seen) {

    private static final double QUARTER = 0.25;
    private static final double HALF = 0.5;

    /** @param values in any order, at least one */
    public static Spread of(Collection<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return new Spread(percentile(sorted, QUARTER), percentile(sorted, HALF), percentile(sorted, 1 - QUARTER), sorted.size());
    }

    /**
     * The value below which a share of the figures lies: that of rank share × (n + 1), between two ranks in proportion (NIST/SEMATECH
     * e-Handbook of Statistical Methods, section 7.2.6.2).
     *
     * @param sorted at least one, smallest first
     * @param share  0 to 1
     */
    public static double percentile(List<Double> sorted, double share) {
        double rank = share * (sorted.size() + 1);
        int below = (int) Math.floor(rank);
        if (below < 1) {
            return sorted.get(0);
        }
        if (below >= sorted.size()) {
            return sorted.get(sorted.size() - 1);
        }
        return sorted.get(below - 1) + (rank - below) * (sorted.get(below) - sorted.get(below - 1));
    }
}
