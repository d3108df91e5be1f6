package crumbclock.methods;

/** What a step's minutes are multiplied by. */
public enum Times {
    /** Once, at the size of the largest tier worked on. */
    ONCE,
    /** For each tier, at its own size. */
    TIERS,
    /** For each tier that stands on another, at the size of the upper one. */
    JOINTS,
    /** For each layer of each tier, at the tier's size. */
    LAYERS,
    /** For each piece. */
    PIECES,
    /** For each dozen of pieces, a begun one counting whole. */
    DOZENS
}
