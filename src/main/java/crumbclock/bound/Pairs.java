package crumbclock.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * Uses of which no two can be at once, since both together take more than there ever is. Where one cannot come first, the
 * other does, and what comes second starts after its end.
 */
final class Pairs {

    private static final int MOST = 20_000;

    private final List<Use[]> pairs = new ArrayList<>();

    Pairs(List<Resource> resources, boolean[] in) {
        for (Resource resource : resources) {
            List<Use> uses = resource.uses().stream()
                    .filter(use -> use.when() != Use.When.IN_PIECES && in[use.first()] && in[use.last()]
                            && 2 * use.weight() > resource.peak()).toList();
            for (int one = 0; one < uses.size() && pairs.size() < MOST; one++) {
                for (int other = 0; other < one; other++) {
                    if (uses.get(one).first() != uses.get(other).first() || uses.get(one).last() != uses.get(other).last()) {
                        pairs.add(new Use[] {uses.get(one), uses.get(other)});
                    }
                }
            }
        }
    }

    /** @return false when it is proven that some two can be in neither order */
    boolean settle(Windows windows, Heads heads, Heads tails) {
        for (Use[] pair : pairs) {
            boolean oneFirst = canBeFirst(pair[0], pair[1], windows);
            boolean otherFirst = canBeFirst(pair[1], pair[0], windows);
            if (!oneFirst && !otherFirst) {
                return false;
            }
            if (!oneFirst) {
                order(pair[1], pair[0], windows, heads, tails);
            } else if (!otherFirst) {
                order(pair[0], pair[1], windows, heads, tails);
            }
        }
        return true;
    }

    private static boolean canBeFirst(Use first, Use second, Windows windows) {
        return first.earliestEnd(windows) <= second.latestStart(windows);
    }

    private static void order(Use first, Use second, Windows windows, Heads heads, Heads tails) {
        second.startFrom(first.earliestEnd(windows), heads);
        first.endBy(second.latestStart(windows), tails, windows.horizon);
    }
}
