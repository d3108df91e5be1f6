package crumbclock.rules.fact;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;

/**
 * A bake in a cavity of the kitchen, with its parts: putting in, heat, cooling in the oven, taking out.
 *
 * @param no unlike that of every other bake; orders pairs
 */
public record Bake(int no, Step step, OvenUse oven, PlacedStep placed) {

    public String stepId() {
        return step.id();
    }

    public String cavityId() {
        return placed.cavityId();
    }

    public int start() {
        return placed.start();
    }

    public int end() {
        return Math.max(placed.start(), placed.end());
    }

    public Span span() {
        return TimedStep.spanOf(placed);
    }

    /** Needs a hot oven: all of it, or all before it cools in the oven (rule R08). */
    public Span heated() {
        return new Span(start(), heatedEnd());
    }

    public int heatedEnd() {
        if (oven.coolInOvenMinutes() == 0) {
            return end();
        }
        return Math.max(start(), start() + step.putInMinutes() + step.leastMinutes() - oven.coolInOvenMinutes());
    }

    /** In the oven with the heat off; empty for most bakes. */
    public Span cooling() {
        return new Span(Math.min(heatedEnd(), end()), end());
    }

    public int shutStart() {
        return start() + step.putInMinutes();
    }

    public int shutEnd() {
        return shutStart() + oven.doorShutMinutes();
    }

    /** The door stays shut from the end of putting in (rule R09). */
    public Span shut() {
        return new Span(shutStart(), shutEnd());
    }

    public Span goingIn() {
        return new Span(start(), start() + step.putInMinutes());
    }

    public Span comingOut() {
        return new Span(end() - step.takeOutMinutes(), end());
    }
}
