package crumbclock.engine.shelf;

/**
 * Finds room for one piece in one bay beside the pieces that stand there at an overlapping time (rules R07 and R10).
 *
 * <p>The answer is complete: when any whole-mm position is free, one is found, and it is the rearmost (or foremost) row
 * with a free place, leftmost in that row. It goes row by row. In one row each neighbour blocks one interval of x; when a
 * chain of intervals blocks the whole row, the rows up to which this very chain stays closed are skipped. They can be
 * found by bisection: the no-go zones are convex, so the overlap of two neighbouring intervals is concave in y, and a
 * chain that opens does so once. What is free is decided in whole numbers; floating point only says how many rows to
 * skip, with a margin far above its error.
 *
 * <p>Neighbours need not keep the gaps among themselves nor stand inside the bay (goods are where people put them). For
 * that reason there is no early exit by area: beside such neighbours it would be wrong.
 *
 * <p>Not thread-safe; reuse one per decoder: once its arrays have grown nothing is allocated.
 */
public final class SpotFinder {
    /** Longest length and furthest coordinate: 10 km, so that sums stay in an int and squares are exact in a double. */
    public static final int MOST_MM = 10_000_000;
    /** In half mm; with squares below 2^53 a sum of a coordinate and a root is off by less than 1e-7. */
    private static final double MARGIN = 1e-6;

    private final NoGoZones zones;
    /** Blocked x in the present row: from first to before free; none when first is not below free. */
    private long[] first;
    private long[] free;
    /** Neighbours that together block the present row, from left to right. */
    private int[] chain;
    private int chainLength;

    private int xMm;
    private int yMm;
    private boolean turned;

    /** @param mostNeighbours how many neighbours are expected; more make the arrays grow */
    public SpotFinder(int mostNeighbours) {
        int size = Math.max(1, mostNeighbours);
        zones = new NoGoZones(size);
        first = new long[size];
        free = new long[size];
        chain = new int[size];
    }

    /** Forgets all neighbours. */
    public void clear() {
        zones.clear();
    }

    /**
     * Something that already stands in the bay.
     *
     * @param xMm left edge of its box, as it stands (already turned); may lie outside the bay
     * @param yMm front edge of its box
     * @throws IllegalArgumentException for a length out of range or a circle with two diameters
     */
    public void addNeighbour(boolean round, int xMm, int yMm, int widthMm, int depthMm) {
        check(round, widthMm, depthMm);
        if (Math.abs((long) xMm) > MOST_MM || Math.abs((long) yMm) > MOST_MM) {
            throw new IllegalArgumentException("a neighbour stands more than " + MOST_MM + " mm away: " + xMm + ", " + yMm);
        }
        zones.add(round, xMm, yMm, widthMm, depthMm);
        if (zones.count() > first.length) {
            first = new long[2 * first.length];
            free = new long[first.length];
            chain = new int[first.length];
        }
    }

    /**
     * {@link #find(int, int, int, int, boolean, int, int, boolean, boolean)} from the back: what stays long stands behind.
     */
    public boolean find(int bayWidthMm, int bayDepthMm, int gapMm, int wallGapMm, boolean round, int widthMm, int depthMm,
            boolean mayTurn) {
        return find(bayWidthMm, bayDepthMm, gapMm, wallGapMm, round, widthMm, depthMm, mayTurn, false);
    }

    /**
     * Looks for a place; {@link #xMm()}, {@link #yMm()} and {@link #turned()} then say which.
     *
     * @param gapMm     least distance to every neighbour, at least 0
     * @param wallGapMm least distance to the bay's edges, at least 0
     * @param mayTurn   also try the piece turned by a quarter, when it finds no place as it is
     * @param fromFront prefer the front (for what is taken out soon) to the back; the left comes second in both
     * @return whether there is a place at all; when not, the three answers above mean nothing
     * @throws IllegalArgumentException for a length out of range or a circle with two diameters
     */
    public boolean find(int bayWidthMm, int bayDepthMm, int gapMm, int wallGapMm, boolean round, int widthMm, int depthMm,
            boolean mayTurn, boolean fromFront) {
        check(round, widthMm, depthMm);
        checkBay(bayWidthMm, bayDepthMm, gapMm, wallGapMm);
        turned = false;
        if (sweep(bayWidthMm, bayDepthMm, gapMm, wallGapMm, round, widthMm, depthMm, fromFront)) {
            return true;
        }
        turned = mayTurn && widthMm != depthMm;
        return turned && sweep(bayWidthMm, bayDepthMm, gapMm, wallGapMm, round, depthMm, widthMm, fromFront);
    }

    /** Left edge of the place found last. */
    public int xMm() {
        return xMm;
    }

    /** Front edge of the place found last. */
    public int yMm() {
        return yMm;
    }

    /** Whether the piece stands turned by a quarter at the place found last. */
    public boolean turned() {
        return turned;
    }

    /**
     * Whether a piece may stand at a given position, exactly.
     *
     * @param widthMm as it would stand, already turned
     * @throws IllegalArgumentException for a length out of range or a circle with two diameters
     */
    public boolean fits(int bayWidthMm, int bayDepthMm, int gapMm, int wallGapMm, boolean round, int xMm, int yMm,
            int widthMm, int depthMm) {
        check(round, widthMm, depthMm);
        checkBay(bayWidthMm, bayDepthMm, gapMm, wallGapMm);
        if (xMm < wallGapMm || xMm > bayWidthMm - wallGapMm - widthMm
                || yMm < wallGapMm || yMm > bayDepthMm - wallGapMm - depthMm) {
            return false;
        }
        zones.shapeFor(round, widthMm, depthMm, gapMm);
        return !zones.block(xMm, yMm);
    }

    /** The neighbours, shaped for the piece asked for last. */
    NoGoZones zones() {
        return zones;
    }

    private boolean sweep(int bayWidthMm, int bayDepthMm, int gapMm, int wallGapMm, boolean round, int widthMm, int depthMm,
            boolean fromFront) {
        int leastX = wallGapMm;
        int mostX = bayWidthMm - wallGapMm - widthMm;
        int leastY = wallGapMm;
        int mostY = bayDepthMm - wallGapMm - depthMm;
        if (mostX < leastX || mostY < leastY) {
            return false;
        }
        zones.shapeFor(round, widthMm, depthMm, gapMm);
        int step = fromFront ? 1 : -1;
        int last = fromFront ? mostY : leastY;
        int y = fromFront ? leastY : mostY;
        while ((last - y) * step >= 0) {
            int x = leftmostFree(y, leastX, mostX);
            if (x <= mostX) {
                xMm = x;
                yMm = y;
                return true;
            }
            y = lastClosed(y, last, leastX, mostX) + step;
        }
        return false;
    }

    /** The first x from the left that no neighbour blocks, above mostX when there is none; leaves the chain behind. */
    private int leftmostFree(int y, int leastX, int mostX) {
        for (int i = 0; i < zones.count(); i++) {
            long reach = zones.reachInRow(i, y);
            if (reach == NoGoZones.NONE) {
                first[i] = Long.MAX_VALUE;
                free[i] = Long.MIN_VALUE;
            } else { // blocked where middle - reach < 2x < middle + reach, both bounds open because touching fits
                first[i] = Math.floorDiv(zones.middleX(i) - reach, 2L) + 1;
                free[i] = Math.floorDiv(zones.middleX(i) + reach + 1, 2L);
            }
        }
        chainLength = 0;
        long x = leastX;
        while (x <= mostX) {
            long reach = x;
            int furthest = -1;
            for (int i = 0; i < zones.count(); i++) {
                if (first[i] <= x && free[i] > reach) {
                    reach = free[i];
                    furthest = i;
                }
            }
            if (furthest < 0) {
                break;
            }
            chain[chainLength++] = furthest;
            x = reach;
        }
        return (int) x;
    }

    /** The furthest row from y towards last up to which the chain that blocks row y blocks every row. */
    private int lastClosed(int y, int last, int leastX, int mostX) {
        if (!isClosed(y, leastX, mostX)) { // a real sliver without a whole mm in it: the next row may open
            return y;
        }
        if (isClosed(last, leastX, mostX)) {
            return last;
        }
        int closed = y;
        int open = last;
        while (Math.abs(open - closed) > 1) {
            int middle = closed + (open - closed) / 2;
            if (isClosed(middle, leastX, mostX)) {
                closed = middle;
            } else {
                open = middle;
            }
        }
        return closed;
    }

    /** Whether the chain's intervals cover the whole row y, each overlapping the next. */
    private boolean isClosed(int y, int leastX, int mostX) {
        double covered = 2.0 * leastX;
        for (int k = 0; k < chainLength; k++) {
            double reach = zones.realReachInRow(chain[k], y);
            double middle = zones.middleX(chain[k]);
            if (reach == NoGoZones.NONE || middle - reach + MARGIN > covered) {
                return false;
            }
            covered = middle + reach;
        }
        return covered >= 2.0 * mostX + MARGIN;
    }

    static void check(boolean round, int widthMm, int depthMm) {
        if (widthMm < 1 || depthMm < 1 || widthMm > MOST_MM || depthMm > MOST_MM) {
            throw new IllegalArgumentException("a piece measures 1 to " + MOST_MM + " mm: " + widthMm + " × " + depthMm);
        }
        if (round && widthMm != depthMm) {
            throw new IllegalArgumentException("a round piece has one diameter: " + widthMm + " × " + depthMm);
        }
    }

    private static void checkBay(int widthMm, int depthMm, int gapMm, int wallGapMm) {
        if (widthMm < 0 || depthMm < 0 || widthMm > MOST_MM || depthMm > MOST_MM) {
            throw new IllegalArgumentException("a bay measures 0 to " + MOST_MM + " mm: " + widthMm + " × " + depthMm);
        }
        checkGaps(gapMm, wallGapMm);
    }

    static void checkGaps(int gapMm, int wallGapMm) {
        if (gapMm < 0 || gapMm > MOST_MM || wallGapMm < 0 || wallGapMm > MOST_MM) {
            throw new IllegalArgumentException("gaps measure 0 to " + MOST_MM + " mm: " + gapMm + ", wall " + wallGapMm);
        }
    }
}
