package crumbclock.methods;

/** How a form's footprint follows from the tier that it carries. */
public enum Shape {
    /** The tier's own shape, wider by so much: a tin, a bare layer. */
    LIKE_TIER,
    /** The rectangle around the tier, wider by so much: a board, a box. */
    RECTANGLE,
    /** Fixed measures: a tub, a cupcake box. */
    FIXED
}
