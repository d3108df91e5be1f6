package crumbclock.engine.decode;

import crumbclock.engine.book.IntList;

/**
 * Bounds that a quick decode raised by itself, in the order in which it found them out.
 *
 * <p>A stay is placed before the work that leads to it (backward), or after it (forward), and a most wait or a life may then
 * break by hours: no order of work would mend that, so a decode without raises never sees the evening before as an
 * evening for that work. A few raises are enough, and more of them creep.
 */
final class QuickRaises {

    /** More raises than that made plans worse: 2 to 4 were equally good on the problems that ship. */
    private static final int MOST = 3;
    /** In place of a task: from here on broken bounds are only counted. */
    private static final int NO_MORE = -1;

    private final IntList foundIn = new IntList();
    private final IntList tasks = new IntList();
    private final IntList bounds = new IntList();
    private final IntList backIn = new IntList();

    void clear() {
        while (foundIn.size() > 0) {
            removeLast();
        }
    }

    /** Whether a decode may raise no more bounds. */
    boolean isUsedUp() {
        return tasks.size() > MOST;
    }

    /**
     * A bound on a task, found out in turn {@code found}, for which the decode went back to turn {@code back}.
     *
     * @return false when there are enough of them: then it is only noted that this was so
     */
    boolean add(int found, int task, int bound, int back) {
        boolean more = tasks.size() < MOST;
        foundIn.add(found);
        tasks.add(more ? task : NO_MORE);
        bounds.add(bound);
        backIn.add(more ? back : found);
        return more;
    }

    /**
     * Forgets what need not hold when the order of work changes from a turn on: what was found out there or later, and
     * whatever was found out after that.
     *
     * @return the turn to go back to
     */
    int forgetFrom(int change) {
        int kept = 0;
        while (kept < foundIn.size() && foundIn.get(kept) < change) {
            kept++;
        }
        int turn = change;
        while (foundIn.size() > kept) {
            turn = Math.min(turn, backIn.get(backIn.size() - 1));
            removeLast();
        }
        return turn;
    }

    /** Raises bounds, by task, to those that are kept. */
    void applyTo(int[] taskBounds) {
        for (int raise = 0; raise < tasks.size(); raise++) {
            if (tasks.get(raise) != NO_MORE) {
                taskBounds[tasks.get(raise)] = bounds.get(raise);
            }
        }
    }

    private void removeLast() {
        foundIn.removeLast();
        tasks.removeLast();
        bounds.removeLast();
        backIn.removeLast();
    }
}
