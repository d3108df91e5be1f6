package crumbclock.domain.work;

/**
 * What something covers, seen from above.
 *
 * @param round   a circle when true; then width and depth are both its diameter
 */
public record Footprint(boolean round, int widthMm, int depthMm) {

    public Footprint {
        if (round && widthMm != depthMm) {
            throw new IllegalArgumentException("a round footprint has one diameter: " + widthMm + " × " + depthMm);
        }
    }

    /** The same thing turned by a quarter. */
    public Footprint turned() {
        return new Footprint(round, depthMm, widthMm);
    }

    /** Area of the rectangle around it, mm². */
    public int boxAreaMm2() {
        return widthMm * depthMm;
    }
}
