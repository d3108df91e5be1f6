package crumbclock.bound;

/**
 * Something that tasks take from a {@link Resource} for some minutes.
 *
 * @param when   which minutes of its tasks it takes
 * @param first  task at whose start it begins
 * @param last   task at whose end it ends; often the same
 * @param length least minutes it lasts, at least 1
 * @param clean  minutes for which it goes on after that end
 * @param weight what it takes in each of its minutes
 * @param pieces the minutes in which work on it can be done at all, for work in pieces; else {@code null}
 */
record Use(When when, int first, int last, int length, int clean, long weight, Presence pieces) {

    /** From the start of one task to the end of another, the first or last minutes of one task, or work in pieces. */
    enum When {
        ALL, AT_START, AT_END, IN_PIECES
    }

    static Use all(int task, int length, long weight) {
        return new Use(When.ALL, task, task, length, 0, weight, null);
    }

    int earliest(Windows windows) {
        return when == When.AT_END ? windows.earliestEnd[last] - length : windows.earliestStart[first];
    }

    int latest(Windows windows) {
        return (when == When.AT_START ? windows.latestStart[first] + length : windows.latestEnd[last]) + clean;
    }

    int earliestEnd(Windows windows) {
        return (when == When.AT_START ? windows.earliestStart[first] + length : windows.earliestEnd[last]) + clean;
    }

    int latestStart(Windows windows) {
        return when == When.AT_END ? windows.latestEnd[last] - length : windows.latestStart[first];
    }

    /** It starts no earlier. */
    void startFrom(int minute, Heads heads) {
        if (when == When.AT_END) {
            heads.raiseEnd(last, minute + length);
        } else {
            heads.raiseStart(first, minute);
        }
    }

    /** It ends no later, with what goes on after it. */
    void endBy(int minute, Heads tails, int horizon) {
        int end = minute - clean;
        if (when == When.AT_START) {
            tails.raiseEnd(first, horizon - (end - length));
        } else {
            tails.raiseStart(last, horizon - end);
        }
    }
}
