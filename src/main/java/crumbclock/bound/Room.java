package crumbclock.bound;

import crumbclock.engine.model.Bits;

/**
 * When one task can be at all, by calendars alone.
 *
 * @param starts   moments at which it may start; {@code null} for all
 * @param ends     moments at which it may end; {@code null} for all
 * @param shortest least minutes from start to end
 * @param longest  most minutes from start to end; {@link Integer#MAX_VALUE} for no limit
 * @param pieces   how it gets done in pieces, or {@code null} when it is done in one go
 */
record Room(long[] starts, long[] ends, int shortest, int longest, Pieces pieces) {

    /** No moment: above every horizon, and far enough from overflow. */
    static final int NEVER = 1 << 28;

    int startFrom(int minute, int horizon) {
        return from(starts, minute, horizon);
    }

    int endFrom(int minute, int horizon) {
        return from(ends, minute, horizon);
    }

    private static int from(long[] moments, int minute, int horizon) {
        if (minute > horizon) {
            return NEVER;
        }
        if (moments == null) {
            return minute;
        }
        int found = Bits.nextSet(moments, minute, horizon + 1);
        return found < 0 ? NEVER : found;
    }

    /** The earliest end when it starts at {@code start} or later. */
    int earliestEnd(int start) {
        return pieces == null ? start + shortest : pieces.earliestEnd(start);
    }

    Room mirrored(int horizon) {
        return new Room(Instants.mirrored(ends, horizon), Instants.mirrored(starts, horizon), shortest, longest,
                pieces == null ? null : pieces.mirrored(horizon));
    }
}
