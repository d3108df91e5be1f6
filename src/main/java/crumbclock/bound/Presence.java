package crumbclock.bound;

import crumbclock.engine.model.Bits;

/** A calendar of minutes that can be counted: how many there are in a stretch, and when so many are over. */
final class Presence {

    private final int horizon;
    /** Minutes before each moment. */
    private final int[] before;
    /** The minutes that are there, from first to last. */
    private final int[] minutes;
    private Presence mirror;

    Presence(long[] calendar, int horizon) {
        this.horizon = horizon;
        before = new int[horizon + 1];
        for (int minute = 0; minute < horizon; minute++) {
            before[minute + 1] = before[minute] + (Bits.get(calendar, minute) ? 1 : 0);
        }
        minutes = new int[before[horizon]];
        for (int minute = 0; minute < horizon; minute++) {
            if (before[minute + 1] > before[minute]) {
                minutes[before[minute]] = minute;
            }
        }
    }

    /** Minutes in {@code [from, until)}, which may reach beyond the horizon; 0 when turned round. */
    int in(int from, int until) {
        return from >= until ? 0 : before[cut(until)] - before[cut(from)];
    }

    private int cut(int moment) {
        return Math.max(0, Math.min(horizon, moment));
    }

    /** The moment at which {@code count} minutes from {@code start} on are over; {@link Room#NEVER} when there are too few. */
    int doneBy(int start, int count) {
        if (count == 0) {
            return start;
        }
        int last = start > horizon ? minutes.length : before[Math.max(0, start)] + count - 1;
        return last >= minutes.length ? Room.NEVER : minutes[last] + 1;
    }

    Presence mirrored() {
        if (mirror == null) {
            long[] turned = Bits.ofSize(horizon + 1);
            for (int minute : minutes) {
                Bits.set(turned, horizon - 1 - minute, horizon - minute);
            }
            mirror = new Presence(turned, horizon);
            mirror.mirror = this;
        }
        return mirror;
    }
}
