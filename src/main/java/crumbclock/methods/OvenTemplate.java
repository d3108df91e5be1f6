package crumbclock.methods;

import java.util.Map;

/**
 * A bake.
 *
 * @param temperatureC      by size, not interpolated: the entry of the largest size that is not above the cake's
 * @param doorShutPercent   share of the bake in which nothing goes in or out;
 *                          {@value #USUAL_DOOR_SHUT_PERCENT} by default
 * @param coolInOvenMinutes last part of the least rest, oven off and nothing else inside; 0 by default
 * @param pan               what stands in the oven
 */
public record OvenTemplate(Map<String, Integer> temperatureC, Integer doorShutPercent, int coolInOvenMinutes,
        PanTemplate pan) {

    /** Articles say half to three quarters of the bake; two thirds and a little is the planning figure. */
    public static final int USUAL_DOOR_SHUT_PERCENT = 70;

    public OvenTemplate {
        temperatureC = Given.map(temperatureC);
        doorShutPercent = Given.or(doorShutPercent, USUAL_DOOR_SHUT_PERCENT);
        pan = Given.or(pan, new PanTemplate(null, null, 0, 0, null));
    }
}
