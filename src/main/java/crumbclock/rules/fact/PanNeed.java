package crumbclock.rules.fact;

import crumbclock.units.Span;

/** A pan of a placed bake, which must stand on one rack of its cavity (rule R07). */
public record PanNeed(String stepId, int pan, String cavityId, Span when) {
}
