package crumbclock.bound;

/** The stretches of time between the borders of some uses, and what has to happen in each of them. */
final class Stretches {

    /** Stretches looked at, times uses. */
    private static final int MOST_WORK = 400_000;
    private static final int MOST_BORDERS = 64;

    private final Use[] uses;
    private final Windows windows;
    private final Heads heads;
    private final Heads tails;
    private final int[] earliest;
    private final int[] latest;
    private final int[] latestStart;
    private final int[] earliestEnd;
    private final int[] whole;
    /** The most that any single use takes in all. */
    private long largest;

    Stretches(Use[] uses, Windows windows, Heads heads, Heads tails) {
        this.uses = uses;
        this.windows = windows;
        this.heads = heads;
        this.tails = tails;
        earliest = new int[uses.length];
        latest = new int[uses.length];
        latestStart = new int[uses.length];
        earliestEnd = new int[uses.length];
        whole = new int[uses.length];
        for (int index = 0; index < uses.length; index++) {
            Use use = uses[index];
            earliest[index] = use.earliest(windows);
            latest[index] = use.latest(windows);
            latestStart[index] = use.latestStart(windows);
            earliestEnd[index] = use.earliestEnd(windows);
            whole[index] = Math.max(use.length() + use.clean(), earliestEnd[index] - latestStart[index]);
            largest = Math.max(largest, use.weight() * whole[index]);
        }
    }

    /**
     * Holds what must happen against what there is, and narrows windows by what is left.
     *
     * @return false when more must happen in some stretch than there is room for
     */
    boolean settle(Supply supply) {
        int most = Math.max(4, Math.min(MOST_BORDERS, (int) Math.sqrt((double) MOST_WORK / uses.length)));
        int[] ends = Borders.some(latest, most);
        for (int from : Borders.some(earliest, most)) {
            for (int until : ends) {
                if (until > from) {
                    long left = supply.in(from, until) - load(from, until);
                    if (left < 0) {
                        return false;
                    }
                    if (left < largest) {
                        narrow(from, until, left);
                    }
                }
            }
        }
        return true;
    }

    private long load(int from, int until) {
        long load = 0;
        for (int index = 0; index < uses.length; index++) {
            if (latest[index] > from && earliest[index] < until) {
                load += uses[index].weight() * least(index, from, until);
            }
        }
        return load;
    }

    /** Minutes of a use that fall into the stretch wherever it is placed within its windows. */
    private int least(int index, int from, int until) {
        if (uses[index].when() == Use.When.IN_PIECES) {
            Presence pieces = uses[index].pieces();
            return Math.max(0, uses[index].length() - pieces.in(earliest[index], from) - pieces.in(until, latest[index]));
        }
        return Math.max(0, Math.min(Math.min(whole[index], until - from),
                Math.min(earliestEnd[index] - from, until - latestStart[index])));
    }

    /** A use that would take more than is left if it came first, or last, comes later, or earlier. */
    private void narrow(int from, int until, long left) {
        for (int index = 0; index < uses.length; index++) {
            Use use = uses[index];
            if (use.when() == Use.When.IN_PIECES || use.weight() * whole[index] <= left) {
                continue;
            }
            long most = left / use.weight() + least(index, from, until);
            int longest = Math.min(whole[index], until - from);
            if (Math.min(longest, earliestEnd[index] - from) > most) {
                use.startFrom((int) (until - most), heads);
            }
            if (Math.min(longest, until - latestStart[index]) > most) {
                use.endBy((int) (from + most), tails, windows.horizon);
            }
        }
    }
}
