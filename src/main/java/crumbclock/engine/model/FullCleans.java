package crumbclock.engine.model;

import crumbclock.domain.kitchen.Pool;
import java.util.List;

/** How long full cleans of one pool's pieces take, by allergen bit (rule R13). */
public final class FullCleans {

    private final int[] minutes;

    FullCleans(Pool pool, List<String> allergens) {
        minutes = allergens.stream().mapToInt(pool::deepCleanMinutes).toArray();
    }

    /** Minutes of the clean that takes away all of {@code met}: the longest of theirs. */
    public int minutes(long met) {
        int longest = 0;
        for (int bit = 0; bit < minutes.length; bit++) {
            if ((met >>> bit & 1) != 0) {
                longest = Math.max(longest, minutes[bit]);
            }
        }
        return longest;
    }

    /** All allergens that a clean of {@code length} minutes takes away. */
    public long cleaned(int length) {
        long cleaned = 0;
        for (int bit = 0; bit < minutes.length; bit++) {
            if (minutes[bit] <= length) {
                cleaned |= 1L << bit;
            }
        }
        return cleaned;
    }
}
