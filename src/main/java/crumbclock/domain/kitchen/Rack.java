package crumbclock.domain.kitchen;

/**
 * One level of an oven cavity.
 *
 * @param widthMm       inside width
 * @param depthMm       inside depth
 * @param clearHeightMm room above the rack; no pan on it is taller
 */
public record Rack(int widthMm, int depthMm, int clearHeightMm) {
}
