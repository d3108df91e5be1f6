package crumbclock.rules.fact;

import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.work.Pan;
import crumbclock.units.Span;

/**
 * A pan where it stands in an oven.
 *
 * @param no           unlike that of every other pan; orders pairs
 * @param bakeCavityId where the timetable says that its step bakes
 */
public record StandingPan(int no, PanPlace place, Pan pan, Shape shape, String bakeCavityId, Span when) {

    public String stepId() {
        return place.stepId();
    }

    public String cavityId() {
        return place.cavityId();
    }

    public int start() {
        return when.start();
    }

    public int end() {
        return when.end();
    }
}
