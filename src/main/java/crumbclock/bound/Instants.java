package crumbclock.bound;

import crumbclock.engine.model.Bits;

/** Sets of moments from 0 to the horizon, both included, as one bit each; made from calendars with one bit a minute. */
final class Instants {

    private Instants() {
    }

    static long[] none(int horizon) {
        return Bits.ofSize(horizon + 1);
    }

    static long[] all(int horizon) {
        long[] all = none(horizon);
        Bits.set(all, 0, horizon + 1);
        return all;
    }

    /** Moments at which a run of {@code length} set minutes of the calendar begins; all moments for a length of 0. */
    static long[] starts(long[] calendar, int length, int horizon) {
        return runs(calendar, length, horizon, 0);
    }

    /** Moments at which such a run ends. */
    static long[] ends(long[] calendar, int length, int horizon) {
        return runs(calendar, length, horizon, length);
    }

    private static long[] runs(long[] calendar, int length, int horizon, int shift) {
        if (length == 0) {
            return all(horizon);
        }
        long[] found = none(horizon);
        int start = Bits.nextSet(calendar, 0, horizon);
        while (start >= 0) {
            int end = Bits.nextClear(calendar, start, horizon);
            Bits.set(found, start + shift, end - length + 1 + shift);
            start = Bits.nextSet(calendar, end, horizon);
        }
        return found;
    }

    static void unite(long[] into, long[] other) {
        for (int word = 0; word < into.length; word++) {
            into[word] |= other[word];
        }
    }

    /** Those in both; {@code null} stands for all moments. */
    static long[] both(long[] one, long[] other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        long[] both = one.clone();
        for (int word = 0; word < both.length; word++) {
            both[word] &= other[word];
        }
        return both;
    }

    /** Moment {@code t} becomes {@code horizon − t}; {@code null} stays. */
    static long[] mirrored(long[] moments, int horizon) {
        if (moments == null) {
            return null;
        }
        long[] mirrored = none(horizon);
        for (int at = Bits.nextSet(moments, 0, horizon + 1); at >= 0; at = Bits.nextSet(moments, at + 1, horizon + 1)) {
            Bits.set(mirrored, horizon - at, horizon - at + 1);
        }
        return mirrored;
    }
}
