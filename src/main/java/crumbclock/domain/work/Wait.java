package crumbclock.domain.work;

/**
 * Time between two steps: {@code start(to) − end(from)} is at least {@code leastMinutes} (rule R01) and at most
 * {@code mostMinutes} (rule R02). The least may be negative: the second step may then begin before the first ends.
 */
public record Wait(String fromStepId, String toStepId, int leastMinutes, int mostMinutes) {

    /** Stands for "no most". */
    public static final int NO_MOST = Integer.MAX_VALUE;

    public boolean hasMost() {
        return mostMinutes != NO_MOST;
    }
}
