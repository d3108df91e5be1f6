package crumbclock.domain.pace;

/** What the steps that were seen say of a pace in use. */
public enum PaceWord {

    NONE_SEEN("none seen"),
    TOO_FEW("too few to say"),
    AS_IN_USE("as in use"),
    SLOWER("slower than in use"),
    FASTER("faster than in use"),
    /** No pace that a kitchen file takes: more likely a slip of the pen. */
    OUT_OF_RANGE("out of range, look at the day file");

    private final String words;

    PaceWord(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
