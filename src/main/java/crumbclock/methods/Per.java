package crumbclock.methods;

/** How often a section is made: once for the whole cake, or once for each tier. */
public enum Per {
    CAKE, TIER
}
