package crumbclock.bound;

import java.util.List;

/**
 * Something that several tasks need, and how much there is of it: hands with a skill, a pool, ovens, shelves.
 *
 * @param peak the most there ever is in one minute
 */
record Resource(String name, Supply supply, long peak, List<Use> uses) {

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
        return counted.length == 0 || new Stretches(counted, windows, heads, tails).settle(supply);
    }
}
