package crumbclock.engine.model;

/**
 * Calendars as one bit a minute. All spans are half-open; all searches run upward.
 */
public final class Bits {

    private Bits() {
    }

    public static long[] ofSize(int minutes) {
        return new long[(minutes + 63) >>> 6];
    }

    public static boolean get(long[] bits, int minute) {
        return (bits[minute >>> 6] >>> minute & 1L) != 0;
    }

    public static void set(long[] bits, int from, int until) {
        if (from >= until) {
            return;
        }
        int first = from >>> 6;
        int last = (until - 1) >>> 6;
        long head = -1L << from;
        long tail = -1L >>> -until;
        if (first == last) {
            bits[first] |= head & tail;
            return;
        }
        bits[first] |= head;
        for (int word = first + 1; word < last; word++) {
            bits[word] = -1L;
        }
        bits[last] |= tail;
    }

    public static void clear(long[] bits, int from, int until) {
        if (from >= until) {
            return;
        }
        int first = from >>> 6;
        int last = (until - 1) >>> 6;
        long head = -1L << from;
        long tail = -1L >>> -until;
        if (first == last) {
            bits[first] &= ~(head & tail);
            return;
        }
        bits[first] &= ~head;
        for (int word = first + 1; word < last; word++) {
            bits[word] = 0;
        }
        bits[last] &= ~tail;
    }

    /** First set minute at or after {@code from} and before {@code limit}; −1 when there is none. */
    public static int nextSet(long[] bits, int from, int limit) {
        if (from >= limit) {
            return -1;
        }
        int word = from >>> 6;
        long rest = bits[word] & (-1L << from);
        int lastWord = (limit - 1) >>> 6;
        while (rest == 0) {
            if (++word > lastWord) {
                return -1;
            }
            rest = bits[word];
        }
        int minute = (word << 6) + Long.numberOfTrailingZeros(rest);
        return minute < limit ? minute : -1;
    }

    /** First clear minute at or after {@code from}; {@code limit} when all up to it are set. */
    public static int nextClear(long[] bits, int from, int limit) {
        if (from >= limit) {
            return limit;
        }
        int word = from >>> 6;
        long rest = ~bits[word] & (-1L << from);
        int lastWord = (limit - 1) >>> 6;
        while (rest == 0) {
            if (++word > lastWord) {
                return limit;
            }
            rest = ~bits[word];
        }
        return Math.min(limit, (word << 6) + Long.numberOfTrailingZeros(rest));
    }

    /** First start at or after {@code from} of a run of {@code length} set minutes that ends by {@code limit}; −1 for none. */
    public static int nextRun(long[] bits, int from, int length, int limit) {
        int start = nextSet(bits, from, limit);
        while (start >= 0 && start + length <= limit) {
            int end = nextClear(bits, start, start + length);
            if (end >= start + length) {
                return start;
            }
            start = nextSet(bits, end, limit);
        }
        return -1;
    }

    /** Latest start at or before {@code latest} and not before {@code from} of such a run; −1 for none. */
    public static int lastRun(long[] bits, int from, int length, int latest) {
        int end = latest + length;
        while (end - length >= from) {
            int gap = lastClear(bits, end - length, end);
            if (gap < 0) {
                return end - length;
            }
            end = lastSet(bits, from, gap) + 1;
            if (end == 0) {
                return -1;
            }
        }
        return -1;
    }

    /** Last set minute in {@code [from, until)}; −1 when there is none. */
    public static int lastSet(long[] bits, int from, int until) {
        return last(bits, from, until, 0);
    }

    /** Last clear minute in {@code [from, until)}; −1 when all are set. */
    public static int lastClear(long[] bits, int from, int until) {
        return last(bits, from, until, -1L);
    }

    /** @param flip all ones to look for clear minutes, 0 to look for set ones */
    private static int last(long[] bits, int from, int until, long flip) {
        if (from >= until) {
            return -1;
        }
        int word = (until - 1) >>> 6;
        long rest = (bits[word] ^ flip) & (-1L >>> -until);
        int firstWord = from >>> 6;
        while (rest == 0) {
            if (--word < firstWord) {
                return -1;
            }
            rest = bits[word] ^ flip;
        }
        int minute = (word << 6) + 63 - Long.numberOfLeadingZeros(rest);
        return minute >= from ? minute : -1;
    }
}
