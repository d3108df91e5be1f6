package crumbclock.methods;

/** How many there are of something that a step needs or puts down. */
public enum Count {
    ONE, TIERS, LAYERS, DOZENS
}
