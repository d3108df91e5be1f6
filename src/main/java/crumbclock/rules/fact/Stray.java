package crumbclock.rules.fact;

import crumbclock.domain.plan.Rule;
import crumbclock.units.Span;

/** Something in the timetable that belongs to nothing: an unknown step, a pan too many, a touch of a step not placed. */
public record Stray(Rule rule, String stepId, String place, Span when, String message) {
}
