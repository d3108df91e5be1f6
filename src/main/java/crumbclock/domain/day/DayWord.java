package crumbclock.domain.day;

/** What can be said of a step on the day. */
public enum DayWord {
    /** Begun at the time of the line. */
    STARTED,
    /** Over at the time of the line. */
    DONE,
    /** Takes so many minutes longer than planned. */
    SLOWER,
    /** What the step was making is lost, with all that went into it. */
    SPOILED,
    /** To be done again from this step on; what came before is still good. */
    REDO,
    /** Not done at all, and not wanted. */
    SKIP
}
