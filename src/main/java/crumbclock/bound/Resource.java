package crumbclock.bound;

import java.util.List;

/** Something that several tasks need, and how much there is of it: hands with a skill, a pool, ovens, shelves. */
record Resource(String name, Supply supply, List<Use> uses) {

    /** Windows looked at, times uses. */
    private static final int MOST_WORK = 400_000;
    private static final int MOST_BORDERS = 64;

    Resource {
        uses = List.copyOf(uses);
    }

    /** Whether more must happen in some stretch of time than there is room for. */
    boolean isOverloaded(Windows windows, boolean[] in) {
        Use[] counted = uses.stream().filter(use -> in[use.first()] && in[use.last()]).toArray(Use[]::new);
        if (counted.length == 0) {
            return false;
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
                if (end > start && load(counted, windows, start, end) > supply.in(start, end)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static long load(Use[] uses, Windows windows, int from, int until) {
        long load = 0;
        for (Use use : uses) {
            load += use.weight() * use.least(windows, from, until);
        }
        return load;
    }
}
