package crumbclock.domain.promise;

/** What the other orders may pay for one more; each allows all that the one before it allows. */
public enum Price {
    /** None of them later, none with a smaller buffer than in the plan that people have. */
    NOBODY_WORSE("nobody-worse", "nobody else worse off"),
    /** Each of them on time, or no later than it is in the plan that people have. */
    ALL_ON_TIME("all-on-time", "all others on time"),
    /** They may be late; each that can be made still is made. */
    ANY_PRICE("any-price", "at any price");

    private final String id;
    private final String words;

    Price(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** For folders and files. */
    public String id() {
        return id;
    }

    /** Briefly, for people. */
    public String words() {
        return words;
    }
}
