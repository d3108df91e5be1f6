package crumbclock.rules.fact;

import crumbclock.units.Span;

/** How many pieces of a pool a placed step needs, and how many the timetable gives it (rule R06). */
public record PoolDemand(String stepId, String poolId, int needed, int given, Span when) {
}
