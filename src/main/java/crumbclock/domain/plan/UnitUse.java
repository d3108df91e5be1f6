package crumbclock.domain.plan;

/** One piece of a pool, held from the start of the step that takes it to the end of the step that gives it back. */
public record UnitUse(String poolId, int unit, int from, int until) {
}
