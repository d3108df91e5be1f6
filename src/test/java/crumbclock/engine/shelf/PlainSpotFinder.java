package crumbclock.engine.shelf;

import java.util.ArrayList;
import java.util.List;

/**
 * The slow plain twin: tries every whole mm. It measures distance another way than the code under test: from the nearest
 * points of the two boxes or centres themselves, in half millimetres, with no grown zones.
 */
final class PlainSpotFinder {
    record Item(boolean round, int x, int y, int w, int d) {
    }

    static boolean farEnough(Item a, Item b, int gap) {
        if (a.round && b.round) {
            long dx = (2L * a.x + a.w) - (2L * b.x + b.w);
            long dy = (2L * a.y + a.d) - (2L * b.y + b.d);
            long least = a.w + b.w + 2L * gap;
            return dx * dx + dy * dy >= least * least;
        }
        if (a.round) {
            return farEnough(b, a, gap);
        }
        if (b.round) {
            long cx = 2L * b.x + b.w;
            long cy = 2L * b.y + b.d;
            long dx = cx - Math.min(Math.max(cx, 2L * a.x), 2L * (a.x + a.w));
            long dy = cy - Math.min(Math.max(cy, 2L * a.y), 2L * (a.y + a.d));
            long least = b.w + 2L * gap;
            return dx * dx + dy * dy >= least * least;
        }
        int sx = Math.max(a.x, b.x) - Math.min(a.x + a.w, b.x + b.w);
        int sy = Math.max(a.y, b.y) - Math.min(a.y + a.d, b.y + b.d);
        long px = Math.max(0, sx);
        long py = Math.max(0, sy);
        return (sx >= 0 || sy >= 0) && px * px + py * py >= (long) gap * gap;
    }

    static boolean fits(int bayW, int bayD, int gap, int wallGap, List<Item> neighbours, Item item) {
        return item.x >= wallGap && item.y >= wallGap && item.x + item.w + wallGap <= bayW
                && item.y + item.d + wallGap <= bayD
                && neighbours.stream().allMatch(other -> farEnough(item, other, gap));
    }

    /** All free places of a piece as it is, rearmost row first (or foremost), from the left. */
    static List<Item> allFree(int bayW, int bayD, int gap, int wallGap, List<Item> neighbours, boolean round, int w, int d,
            boolean fromFront) {
        List<Item> found = new ArrayList<>();
        for (int row = 0; row <= bayD; row++) {
            for (int x = 0; x <= bayW; x++) {
                Item item = new Item(round, x, fromFront ? row : bayD - row, w, d);
                if (fits(bayW, bayD, gap, wallGap, neighbours, item)) {
                    found.add(item);
                }
            }
        }
        return found;
    }

    private PlainSpotFinder() {
    }
}
