package crumbclock.methods;

/**
 * The pans of a bake, by their outside measures.
 *
 * @param count    one pan for each of these; layers by default
 * @param plusMm   outside measure beyond the nominal size, {@value #USUAL_PLUS_MM} by default
 * @param widthMm  fixed outside width instead of the tier's size; 0 to take the tier's
 * @param depthMm  fixed outside depth
 * @param heightMm {@value #USUAL_HEIGHT_MM} by default, a two-inch pan
 */
public record PanTemplate(Count count, Integer plusMm, int widthMm, int depthMm, Integer heightMm) {

    /** Rim and wall of a straight pan: measured pans are 12 to 14 mm wider than their name says. */
    public static final int USUAL_PLUS_MM = 13;
    public static final int USUAL_HEIGHT_MM = 51;

    public PanTemplate {
        count = Given.or(count, Count.LAYERS);
        plusMm = Given.or(plusMm, USUAL_PLUS_MM);
        heightMm = Given.or(heightMm, USUAL_HEIGHT_MM);
    }
}
