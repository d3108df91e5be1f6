package crumbclock.bound;

import java.util.List;

/**
 * Something that several tasks need, and how much there is of it: hands with a skill, a pool, ovens, shelves.
 *
 * @param peak the most there ever is in one minute
 */
record Resource(String name, Supply supply, long peak, List<Use> uses) {

    /** Windows looked at, times uses. */
    private static final int MOST_WORK = 400_000;
    private static final int MOST_BORDERS = 64;

    Resource {
        uses = List.copyOf(uses);
    }

    /**
     * Holds what must happen in stretches of time against what there is, and narrows windows by what is left.
     *
     * @return false when more must happen in some stretch than there is room for
     */
    boolean settle(Windows windows, boolean[] in, Heads heads, Heads tails) {
        Use[] counted = uses.stream().filter(use -> in[use.first()] && in[use.last()]).toArray(Use[]::new);
        if (counted.length == 0) {
            return true;
        }
        int most = Math.max(4, Math.min(MOST_BORDERS, (int) Math.sqrt((double) MOST_WORK / counted.length)));
        int[] from = new int[counted.length];
        int[] until = new int[counted.length];
        for (int use = 0; use < counted.length; use++) {
            from[use] = counted[use].earliest(windows);
            until[use] = counted[use].latest(windows);
        }
        int[] borders = Borders.some(until, most);
        for (int start : Borders.some(from, most)) {
            for (int end : borders) {
                if (end > start) {
                    long left = supply.in(start, end) - load(counted, windows, start, end);
                    if (left < 0) {
                        return false;
                    }
                    narrow(counted, windows, start, end, left, heads, tails);
                }
            }
        }
        return true;
    }

    /** A use that would take more than is left if it came first, or last, comes later, or earlier. */
    private static void narrow(Use[] uses, Windows windows, int from, int until, long left, Heads heads, Heads tails) {
        for (Use use : uses) {
            if (use.when() == Use.When.IN_PIECES || use.weight() * (use.length() + use.clean()) <= left) {
                continue;
            }
            long most = left / use.weight() + use.least(windows, from, until);
            long whole = Math.min(use.length() + use.clean(), until - from);
            if (Math.min(whole, use.earliestEnd(windows) - from) > most) {
                use.startFrom((int) (until - most), heads);
            }
            if (Math.min(whole, until - use.latestStart(windows)) > most) {
                use.endBy((int) (from + most), tails, windows.horizon);
            }
        }
    }

    private static long load(Use[] uses, Windows windows, int from, int until) {
        long load = 0;
        for (Use use : uses) {
            load += use.weight() * use.least(windows, from, until);
        }
        return load;
    }
}
