package crumbclock.domain.work;

import java.util.List;

/**
 * A bake. It belongs to an unattended step whose rest between the touches is baking, then cooling in the oven.
 *
 * @param temperatureC       one temperature for the whole bake
 * @param pans               all pans of the step; they share one cavity
 * @param doorShutMinutes    from the end of putting in: nothing else goes in or out (rule R09)
 * @param coolInOvenMinutes  last part of the step's least minutes, oven off and nothing else inside; 0 for none
 */
public record OvenUse(int temperatureC, List<Pan> pans, int doorShutMinutes, int coolInOvenMinutes) {

    public OvenUse {
        pans = List.copyOf(pans);
    }
}
