package crumbclock.engine.shelf;

import java.util.Arrays;

/**
 * What the centre of one piece must keep out of: each neighbour grown by the piece and the gap, a rectangle with rounded
 * corners (a circle when its core is empty). All in half millimetres, hence whole numbers, hence exact.
 */
final class NoGoZones {
    /** Answer when a zone does not meet the row. */
    static final int NONE = -1;

    private int count;
    /** Twice the centre of each neighbour, and its measures. */
    private int[] centreX;
    private int[] centreY;
    private int[] width;
    private int[] depth;
    private boolean[] circle;

    /** Half the core rectangle and the rounding of each zone, for the present piece. */
    private int[] coreX;
    private int[] coreY;
    private int[] rounding;
    private int pieceWidth;
    private int pieceDepth;

    NoGoZones(int size) {
        centreX = new int[size];
        centreY = new int[size];
        width = new int[size];
        depth = new int[size];
        circle = new boolean[size];
        coreX = new int[size];
        coreY = new int[size];
        rounding = new int[size];
    }

    int count() {
        return count;
    }

    void clear() {
        count = 0;
    }

    /** Forgets the neighbour added last. */
    void removeLast() {
        count--;
    }

    void add(boolean round, int xMm, int yMm, int widthMm, int depthMm) {
        if (count == centreX.length) {
            grow(2 * count);
        }
        centreX[count] = 2 * xMm + widthMm;
        centreY[count] = 2 * yMm + depthMm;
        width[count] = widthMm;
        depth[count] = depthMm;
        circle[count] = round;
        count++;
    }

    /** Shapes the zones for this piece; to be called before anything below is asked. */
    void shapeFor(boolean round, int widthMm, int depthMm, int gapMm) {
        pieceWidth = widthMm;
        pieceDepth = depthMm;
        for (int i = 0; i < count; i++) {
            coreX[i] = (round ? 0 : widthMm) + (circle[i] ? 0 : width[i]);
            coreY[i] = (round ? 0 : depthMm) + (circle[i] ? 0 : depth[i]);
            rounding[i] = 2 * gapMm + (round ? widthMm : 0) + (circle[i] ? width[i] : 0);
        }
    }

    /** Whether the piece with its front left corner here comes too near any neighbour; touching is not too near. */
    boolean block(int xMm, int yMm) {
        for (int i = 0; i < count; i++) {
            long dx = Math.abs(2 * xMm - middleX(i)) - coreX[i];
            long dy = Math.abs(2 * yMm - middleY(i)) - coreY[i];
            if (dx < 0 && dy < 0) {
                return true;
            }
            long right = Math.max(0, dx);
            long up = Math.max(0, dy);
            if (right * right + up * up < (long) rounding[i] * rounding[i]) {
                return true;
            }
        }
        return false;
    }

    /** Twice the x at which the piece would stand centred on neighbour i. */
    int middleX(int i) {
        return centreX[i] - pieceWidth;
    }

    /** Twice the y at which the piece would stand centred on neighbour i. */
    int middleY(int i) {
        return centreY[i] - pieceDepth;
    }

    int coreX(int i) {
        return coreX[i];
    }

    int coreY(int i) {
        return coreY[i];
    }

    int rounding(int i) {
        return rounding[i];
    }

    /** In row y, x is blocked exactly when 2x is less than this away from {@link #middleX}; or {@link #NONE}. */
    long reachInRow(int i, int yMm) {
        return reach(coreX[i], rounding[i], Math.abs(2 * yMm - middleY(i)) - coreY[i]);
    }

    /** In column x, y is blocked exactly when 2y is less than this away from {@link #middleY}; or {@link #NONE}. */
    long reachInColumn(int i, int xMm) {
        return reach(coreY[i], rounding[i], Math.abs(2 * xMm - middleX(i)) - coreX[i]);
    }

    private static long reach(int core, int rounding, long beyondCore) {
        if (beyondCore < 0) {
            return core + (long) rounding;
        }
        long square = (long) rounding * rounding - beyondCore * beyondCore;
        return square <= 0 ? NONE : core + ceilRoot(square);
    }

    /** {@link #reachInRow} before rounding up to whole half millimetres. */
    double realReachInRow(int i, int yMm) {
        long beyondCore = Math.abs(2 * yMm - middleY(i)) - coreY[i];
        if (beyondCore < 0) {
            return coreX[i] + (double) rounding[i];
        }
        long square = (long) rounding[i] * rounding[i] - beyondCore * beyondCore;
        return square <= 0 ? NONE : coreX[i] + Math.sqrt((double) square);
    }

    /** The least whole number whose square is at least the given one, which is positive. */
    private static long ceilRoot(long square) {
        long root = (long) Math.sqrt((double) square);
        while (root * root < square) {
            root++;
        }
        while ((root - 1) * (root - 1) >= square) {
            root--;
        }
        return root;
    }

    private void grow(int size) {
        centreX = Arrays.copyOf(centreX, size);
        centreY = Arrays.copyOf(centreY, size);
        width = Arrays.copyOf(width, size);
        depth = Arrays.copyOf(depth, size);
        circle = Arrays.copyOf(circle, size);
        coreX = Arrays.copyOf(coreX, size);
        coreY = Arrays.copyOf(coreY, size);
        rounding = Arrays.copyOf(rounding, size);
    }
}
