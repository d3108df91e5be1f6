package crumbclock.domain.plan;

import crumbclock.units.Span;

/**
 * A touch in the timetable: {@code [start of step, + minutes)} for putting in, {@code [end of step − minutes, end)}
 * for taking out.
 */
public record PlacedTouch(String stepId, TouchEnd at, String personId, Span when) {
}
