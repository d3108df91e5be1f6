package crumbclock.domain.plan;

/** What makes one sound plan better than another. */
public enum Wish {
    W01("a buffer before the hand-over"),
    W02("freshness"),
    W03("few, even and ordinary hours"),
    W04("calm"),
    W05("oven used well"),
    W06("shelves easy to reach"),
    W07("done early"),
    W08("keep to the known plan");

    private final String title;

    Wish(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
