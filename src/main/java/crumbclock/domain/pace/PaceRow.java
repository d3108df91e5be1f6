package crumbclock.domain.pace;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * One person's pace in one kind of work.
 *
 * @param inUse factor in the kitchen, 1 where it names none
 * @param seen  of the factors really taken; empty when no step was seen
 * @param steps that it was reckoned from, by time
 */
public record PaceRow(String personId, String personName, String workKind, double inUse, Optional<Spread> seen, List<SeenStep> steps) {

    /** With fewer steps nothing is said. */
    public static final int LEAST_SEEN = 3;
    /** Nearer than this to the pace in use is the same: a minute in twenty. */
    public static final double SAME = 0.05;
    /** Least and most that a kitchen file takes. */
    public static final double LEAST_PACE = 0.1;
    public static final double MOST_PACE = 10;

    private static final int DECIMALS = 2;

    public PaceRow {
        steps = List.copyOf(steps);
    }

    /** The median, to two decimals; only when something was seen. */
    public double rounded() {
        return rounded(seen.orElseThrow().median());
    }

    static double rounded(double value) {
        return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
    }

    public PaceWord word() {
        if (seen.isEmpty()) {
            return PaceWord.NONE_SEEN;
        }
        if (seen.get().seen() < LEAST_SEEN) {
            return PaceWord.TOO_FEW;
        }
        double pace = rounded();
        if (pace < LEAST_PACE || pace > MOST_PACE) {
            return PaceWord.OUT_OF_RANGE;
        }
        if (Math.abs(pace - inUse) < SAME) {
            return PaceWord.AS_IN_USE;
        }
        return pace > inUse ? PaceWord.SLOWER : PaceWord.FASTER;
    }

    /** The pace to take instead of the one in use; empty to leave it as it is. */
    public Optional<Double> learned() {
        return word() == PaceWord.SLOWER || word() == PaceWord.FASTER ? Optional.of(rounded()) : Optional.empty();
    }
}
