package crumbclock.bound;

/** The earliest and latest times of each task, in real minutes. */
final class Windows {

    final int horizon;
    final int[] earliestStart;
    final int[] earliestEnd;
    final int[] latestStart;
    final int[] latestEnd;

    /**
     * @param heads of the net
     * @param tails of the mirrored net
     */
    Windows(Heads heads, Heads tails, int horizon) {
        this.horizon = horizon;
        earliestStart = heads.start;
        earliestEnd = heads.end;
        latestStart = new int[heads.start.length];
        latestEnd = new int[heads.start.length];
        for (int task = 0; task < latestStart.length; task++) {
            latestStart[task] = horizon - tails.end[task];
            latestEnd[task] = horizon - tails.start[task];
        }
    }
}
