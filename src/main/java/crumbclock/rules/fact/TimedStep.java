package crumbclock.rules.fact;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;

/**
 * A step of the problem with its place in the timetable. The start is the planning variable that makes a finished
 * timetable something Timefold can score; nothing here ever changes it.
 */
@PlanningEntity
public class TimedStep {

    private Step step;
    private PlacedStep placed;
    @PlanningVariable
    private Integer start;

    /** For Timefold's cloning only. */
    TimedStep() {
    }

    public TimedStep(Step step, PlacedStep placed) {
        this.step = step;
        this.placed = placed;
        this.start = placed.start();
    }

    public String id() {
        return step.id();
    }

    public String ownerId() {
        return step.ownerId();
    }

    public Step step() {
        return step;
    }

    public PlacedStep placed() {
        return placed;
    }

    public int start() {
        return start;
    }

    public int end() {
        return placed.end();
    }

    /** From start to end; empty when the timetable has the end before the start. */
    public Span span() {
        return spanOf(placed);
    }

    /** Minutes between the touches; negative when they do not even fit. */
    public long restMinutes() {
        return (long) placed.end() - placed.start() - step.putInMinutes() - step.takeOutMinutes();
    }

    public boolean isHandsOn() {
        return step.handsOn().isPresent();
    }

    /** Whether people must work on it: a hands-on step that is not just a milestone. */
    public boolean needsHands() {
        return step.handsOn().map(HandsOn::minutes).orElse(0) > 0;
    }

    @Override
    public String toString() {
        return step.id() + " [" + placed.start() + ", " + placed.end() + ")";
    }

    static Span spanOf(PlacedStep placed) {
        return new Span(placed.start(), Math.max(placed.start(), placed.end()));
    }
}
