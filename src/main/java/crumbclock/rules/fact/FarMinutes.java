package crumbclock.rules.fact;

import crumbclock.units.Span;

/**
 * Keeps nonsense out of sums: no minute of a fact is further than almost two hundred years from the problem's start,
 * so adding and subtracting minutes never leaves an int, whatever a timetable says.
 */
final class FarMinutes {

    static final int FAR = 100_000_000;

    private FarMinutes() {
    }

    static boolean isFar(int minute) {
        return minute < -FAR || minute > FAR;
    }

    static int clip(int minute) {
        return Math.max(-FAR, Math.min(FAR, minute));
    }

    static Span clip(Span span) {
        return isFar(span.start()) || isFar(span.end()) ? new Span(clip(span.start()), clip(span.end())) : span;
    }
}
