package crumbclock.engine.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The free places of one piece at which it touches two things, walls or neighbours, to the whole mm: corners of the bay,
 * a zone's edge met by a wall, by another zone's straight side, or by another zone's rounding.
 *
 * <p>Where a wall or a straight side takes part, the other coordinate is rounded away from the zone exactly. Where two
 * roundings meet, the tangent point is computed in floating point and the nearest free one of the four whole points
 * around it is taken. In two-piece contact that is as tight as whole mm allow.
 */
final class TouchPoints {
    /** A place for the front left corner. */
    record Point(int xMm, int yMm) {
    }

    /** From the back, then from the left. */
    private static final Comparator<Point> FROM_BACK =
            Comparator.comparingInt((Point p) -> -p.yMm()).thenComparingInt(Point::xMm);

    private final NoGoZones zones;
    private final int leastX;
    private final int mostX;
    private final int leastY;
    private final int mostY;
    private final TreeSet<Point> found = new TreeSet<>(FROM_BACK);

    /**
     * @param zones  already shaped for the piece
     * @param leastX the window for the front left corner, both ends inclusive
     */
    private TouchPoints(NoGoZones zones, int leastX, int mostX, int leastY, int mostY) {
        this.zones = zones;
        this.leastX = leastX;
        this.mostX = mostX;
        this.leastY = leastY;
        this.mostY = mostY;
    }

    /** All touching places, rearmost first, each once. */
    static List<Point> of(NoGoZones zones, int leastX, int mostX, int leastY, int mostY) {
        if (mostX < leastX || mostY < leastY) {
            return List.of();
        }
        TouchPoints points = new TouchPoints(zones, leastX, mostX, leastY, mostY);
        points.addColumn(leastX, Integer.MIN_VALUE, Integer.MAX_VALUE);
        points.addColumn(mostX, Integer.MIN_VALUE, Integer.MAX_VALUE);
        points.addRow(leastY, Integer.MIN_VALUE, Integer.MAX_VALUE);
        points.addRow(mostY, Integer.MIN_VALUE, Integer.MAX_VALUE);
        for (int i = 0; i < zones.count(); i++) {
            points.addSides(i);
            for (int j = 0; j < i; j++) {
                points.addRoundings(i, j);
            }
        }
        return new ArrayList<>(points.found);
    }

    private void addSides(int i) {
        int outX = zones.coreX(i) + zones.rounding(i);
        int outY = zones.coreY(i) + zones.rounding(i);
        if (zones.coreY(i) > 0) {
            int low = Math.floorDiv(zones.middleY(i) - zones.coreY(i) + 1, 2);
            int high = Math.floorDiv(zones.middleY(i) + zones.coreY(i), 2);
            addColumn(Math.floorDiv(zones.middleX(i) - outX, 2), low, high);
            addColumn(Math.floorDiv(zones.middleX(i) + outX + 1, 2), low, high);
        }
        if (zones.coreX(i) > 0) {
            int low = Math.floorDiv(zones.middleX(i) - zones.coreX(i) + 1, 2);
            int high = Math.floorDiv(zones.middleX(i) + zones.coreX(i), 2);
            addRow(Math.floorDiv(zones.middleY(i) - outY, 2), low, high);
            addRow(Math.floorDiv(zones.middleY(i) + outY + 1, 2), low, high);
        }
    }

    /** Where the piece touches a straight edge at x, and something else above or below. */
    private void addColumn(int x, int low, int high) {
        if (x < leastX || x > mostX) {
            return;
        }
        addBetween(x, leastY, low, high);
        addBetween(x, mostY, low, high);
        for (int i = 0; i < zones.count(); i++) {
            long reach = zones.reachInColumn(i, x);
            if (reach != NoGoZones.NONE) {
                addBetween(x, Math.floorDiv(zones.middleY(i) - reach, 2L), low, high);
                addBetween(x, Math.floorDiv(zones.middleY(i) + reach + 1, 2L), low, high);
            }
        }
    }

    private void addBetween(int x, long y, int low, int high) {
        if (y >= low && y <= high) {
            addIfFree(x, y);
        }
    }

    private void addRow(int y, int low, int high) {
        if (y < leastY || y > mostY) {
            return;
        }
        for (int i = 0; i < zones.count(); i++) {
            long reach = zones.reachInRow(i, y);
            if (reach != NoGoZones.NONE) {
                long left = Math.floorDiv(zones.middleX(i) - reach, 2L);
                long right = Math.floorDiv(zones.middleX(i) + reach + 1, 2L);
                if (left >= low && left <= high) {
                    addIfFree(left, y);
                }
                if (right >= low && right <= high) {
                    addIfFree(right, y);
                }
            }
        }
        if (leastX >= low && leastX <= high) {
            addIfFree(leastX, y);
        }
        if (mostX >= low && mostX <= high) {
            addIfFree(mostX, y);
        }
    }

    /** Every corner circle of one zone with every corner circle of the other. */
    private void addRoundings(int i, int j) {
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                if (isCorner(i, a) && isCorner(j, b)) {
                    addCrossings(cornerX(i, a), cornerY(i, a), zones.rounding(i),
                            cornerX(j, b), cornerY(j, b), zones.rounding(j));
                }
            }
        }
    }

    /** A core without width or depth has fewer than four corners. */
    private boolean isCorner(int i, int corner) {
        return zones.rounding(i) > 0 && (zones.coreX(i) > 0 || (corner & 1) == 0)
                && (zones.coreY(i) > 0 || (corner & 2) == 0);
    }

    private double cornerX(int i, int corner) {
        return zones.middleX(i) + ((corner & 1) == 0 ? zones.coreX(i) : -zones.coreX(i));
    }

    private double cornerY(int i, int corner) {
        return zones.middleY(i) + ((corner & 2) == 0 ? zones.coreY(i) : -zones.coreY(i));
    }

    private void addCrossings(double ax, double ay, double ar, double bx, double by, double br) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return;
        }
        double along = (square + ar * ar - br * br) / (2 * square);
        double across = ar * ar / square - along * along;
        if (across < 0) {
            return;
        }
        double root = Math.sqrt(across);
        double footX = ax + along * dx;
        double footY = ay + along * dy;
        addNearest((footX - root * dy) / 2, (footY + root * dx) / 2);
        addNearest((footX + root * dy) / 2, (footY - root * dx) / 2);
    }

    /** Blocked points fall out by themselves, those on a part of the circle inside its own zone too. */
    private void addNearest(double x, double y) {
        long left = (long) Math.floor(x);
        long front = (long) Math.floor(y);
        double nearest = Double.MAX_VALUE;
        Point best = null;
        for (long px = left; px <= left + 1; px++) {
            for (long py = front + 1; py >= front; py--) {
                double distance = (px - x) * (px - x) + (py - y) * (py - y);
                if (distance < nearest && isFree(px, py)) {
                    nearest = distance;
                    best = new Point((int) px, (int) py);
                }
            }
        }
        if (best != null) {
            found.add(best);
        }
    }

    private void addIfFree(long x, long y) {
        if (isFree(x, y)) {
            found.add(new Point((int) x, (int) y));
        }
    }

    private boolean isFree(long x, long y) {
        return x >= leastX && x <= mostX && y >= leastY && y <= mostY && !zones.block((int) x, (int) y);
    }
}
