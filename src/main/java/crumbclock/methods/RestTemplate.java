package crumbclock.methods;

import java.util.Map;

/**
 * An unattended rest between two touches.
 *
 * @param leastMinutes   least rest by size
 * @param mostMinutes    most rest by size; empty for no limit
 * @param putInMinutes   touch at the start, 0 for none
 * @param takeOutMinutes touch at the end, 0 for none
 * @param presence       someone must be in the kitchen all through
 * @param oven           the bake, when it is one; null otherwise
 */
public record RestTemplate(Map<String, Integer> leastMinutes, Map<String, Integer> mostMinutes, int putInMinutes,
        int takeOutMinutes, boolean presence, OvenTemplate oven) {

    public RestTemplate {
        leastMinutes = Given.map(leastMinutes);
        mostMinutes = Given.map(mostMinutes);
    }
}
