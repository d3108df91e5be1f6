package crumbclock.rules.fact;

import crumbclock.units.Span;

/** A piece of a placed step that must stand on a shelf all through the step (rule R10). */
public record PlaceDue(String stepId, int piece, Span when) {
}
