package crumbclock.rules.fact;

/**
 * An order that needs the steps of an owner: its cakes', its own, and those of the batches that its cakes use.
 *
 * @param ownerId cake, batch or order that steps belong to
 */
public record Claim(String ownerId, String orderId, Fate fate) {

    /** What the timetable says of the order. */
    public enum Fate {
        MADE, NOT_MADE, UNTOLD
    }

    public boolean isMade() {
        return fate == Fate.MADE;
    }
}
