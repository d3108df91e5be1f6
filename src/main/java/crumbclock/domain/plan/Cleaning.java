package crumbclock.domain.plan;

import crumbclock.units.Span;

/** A full clean of one piece of equipment between a use that held an allergen and one that must be free from it. */
public record Cleaning(String poolId, int unit, Span when) {
}
