package crumbclock.rules.fact;

import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.units.Span;

/**
 * A touch in the timetable that belongs to a placed step.
 *
 * @param no       unlike that of every other touch; orders pairs
 * @param cavityId where the step bakes; empty for a step that is no bake
 */
public record GivenTouch(int no, PlacedTouch placed, String cavityId) {

    public String stepId() {
        return placed.stepId();
    }

    public TouchEnd at() {
        return placed.at();
    }

    public String personId() {
        return placed.personId();
    }

    public Span when() {
        return FarMinutes.clip(placed.when());
    }

    public int start() {
        return when().start();
    }

    public int end() {
        return when().end();
    }

    /** Whether both are one movement: pans of two bakes that go into, or come out of, one cavity together (rule R04). */
    public boolean isOneWith(GivenTouch other) {
        return !stepId().equals(other.stepId()) && movement().equals(other.movement()) && when().equals(other.when());
    }

    /** Names what moves: equal for bakes of one cavity at the same end, unlike for everything else. */
    public String movement() {
        return (cavityId.isEmpty() ? "step " + stepId() : "cavity " + cavityId) + " " + at();
    }
}
