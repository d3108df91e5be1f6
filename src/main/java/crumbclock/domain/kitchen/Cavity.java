package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;

/**
 * One oven cavity with a temperature of its own (a deck oven has several).
 *
 * @param preheatMinutes    from cold to any temperature in range (rule R08)
 * @param upPerTenC         minutes for each begun 10 °C upward when the oven stays on
 * @param downPerTenC       minutes for each begun 10 °C downward when the oven stays on
 * @param keepHotMinutes    an oven left empty longer than this is turned off rather than kept on
 * @param wallGapMm         air between a pan and the walls (rule R07)
 * @param panGapMm          air between pans on one rack
 * @param away              when the cavity cannot be used: sorted, disjoint
 */
public record Cavity(String id, String name, List<Rack> racks, int leastC, int mostC, int preheatMinutes,
        int upPerTenC, int downPerTenC, int keepHotMinutes, int wallGapMm, int panGapMm, List<Span> away) {

    public Cavity {
        racks = List.copyOf(racks);
        away = List.copyOf(away);
    }

    /** Minutes from one temperature to another while the oven stays on; 0 when they are equal. */
    public int changeMinutes(int fromC, int toC) {
        int tens = (Math.abs(toC - fromC) + 9) / 10;
        return tens * (toC > fromC ? upPerTenC : downPerTenC);
    }
}
