package crumbclock.domain.day;

import crumbclock.units.Span;

/**
 * A line about the whole kitchen.
 *
 * @param line 1-based line of the file
 * @param id   of the oven, store or person; empty for a power cut
 * @param when it cannot be used, or is not there
 */
public record KitchenEvent(int line, Kind kind, String id, Span when) {

    /** What happened. */
    public enum Kind {
        POWER_CUT, OVEN_DEAD, STORE_WARM, PERSON_AWAY
    }
}
