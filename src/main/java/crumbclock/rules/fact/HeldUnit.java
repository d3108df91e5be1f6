package crumbclock.rules.fact;

import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;

/**
 * One piece of equipment in use.
 *
 * @param no           unlike that of every other use; orders pairs
 * @param stepStart    when the step that takes it starts
 * @param cleanMinutes idle minutes that the pool wants after it
 */
public record HeldUnit(int no, Step step, int stepStart, UnitUse use, int cleanMinutes) {

    public String stepId() {
        return step.id();
    }

    public String poolId() {
        return use.poolId();
    }

    public int unit() {
        return use.unit();
    }

    public int from() {
        return FarMinutes.clip(use.from());
    }

    /** Never before {@link #from}, so that a turned-round use is one fault and not many. */
    public int until() {
        return Math.max(from(), FarMinutes.clip(use.until()));
    }

    /** When it may be taken again (rule R06). */
    public int cleanAt() {
        return until() + cleanMinutes;
    }

    public Span when() {
        return new Span(from(), until());
    }
}
