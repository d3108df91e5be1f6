package crumbclock.domain.plan;

/**
 * Where one pan stands in the oven for the whole of its step.
 *
 * @param pan   index into the step's pans
 * @param rack  index into the cavity's racks
 * @param xMm   left edge, from the rack's left edge
 * @param yMm   front edge, from the rack's front edge
 */
public record PanPlace(String stepId, int pan, String cavityId, int rack, int xMm, int yMm, boolean turned) {
}
