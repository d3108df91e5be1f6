package crumbclock.rules.fact;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;

/** One rack of a cavity, by its number from 0. */
public record RackSpot(Cavity cavity, int index, Rack rack) {

    public String cavityId() {
        return cavity.id();
    }
}
