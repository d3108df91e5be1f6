package crumbclock.rules.fact;

import crumbclock.domain.plan.Placement;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;

/**
 * A piece of a step where the timetable puts it in a store.
 *
 * @param no unlike that of every other; orders pairs
 */
public record Standing(int no, Placement placement, Step step, Form form, Shape shape) {

    public String stepId() {
        return placement.stepId();
    }

    public int piece() {
        return placement.piece();
    }

    public String storeId() {
        return placement.storeId();
    }

    public String shelfId() {
        return placement.shelfId();
    }

    public Span when() {
        return FarMinutes.clip(placement.when());
    }

    public int start() {
        return when().start();
    }

    public int end() {
        return when().end();
    }
}
