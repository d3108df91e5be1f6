package crumbclock.rules.fact;

import crumbclock.domain.work.Footprint;

/**
 * A footprint where it stands, seen from above, in mm from the front left corner of its shelf or rack. Distances are
 * compared as squares of whole numbers (doubled where a circle's centre may lie on half a millimetre), so touching is
 * told from overlapping exactly and never by rounding.
 *
 * @param round a circle inside the square {@code widthMm} × {@code depthMm}
 */
public record Shape(boolean round, int xMm, int yMm, int widthMm, int depthMm) {

    /** No shelf is so wide; keeps squares inside a long even when a position is nonsense. */
    private static final long FAR = 1L << 30;

    public static Shape of(Footprint footprint, int xMm, int yMm, boolean turned) {
        Footprint seen = turned ? footprint.turned() : footprint;
        return new Shape(seen.round(), xMm, yMm, seen.widthMm(), seen.depthMm());
    }

    /** Whether it stands wholly on a board of that size, at least {@code wallGapMm} from its edges. */
    public boolean fitsOn(int boardWidthMm, int boardDepthMm, int wallGapMm) {
        return xMm >= wallGapMm && yMm >= wallGapMm && right() + wallGapMm <= boardWidthMm
                && back() + wallGapMm <= boardDepthMm;
    }

    /** Whether the nearest points of both are at least {@code gapMm} apart; with gap 0 they may touch. */
    public boolean isApartFrom(Shape other, int gapMm) {
        if (round && other.round) {
            long reach = (long) widthMm + other.widthMm + 2L * gapMm;
            return squared(centreX2() - other.centreX2(), centreY2() - other.centreY2()) >= reach * reach;
        }
        if (round) {
            return isCircleApartFrom(other, gapMm);
        }
        if (other.round) {
            return other.isCircleApartFrom(this, gapMm);
        }
        long across = Math.max(other.xMm - right(), xMm - other.right());
        long along = Math.max(other.yMm - back(), yMm - other.back());
        if (across < 0 && along < 0) {
            return false;
        }
        return squared(Math.max(0, across), Math.max(0, along)) >= (long) gapMm * gapMm;
    }

    /** Whether the x-intervals of both share more than a border: one then stands in line with the other. */
    public boolean isInLineWith(Shape other) {
        return xMm < other.right() && other.xMm < right();
    }

    private boolean isCircleApartFrom(Shape rectangle, int gapMm) {
        long nearestX2 = Math.max(2L * rectangle.xMm, Math.min(centreX2(), 2 * rectangle.right()));
        long nearestY2 = Math.max(2L * rectangle.yMm, Math.min(centreY2(), 2 * rectangle.back()));
        long reach = widthMm + 2L * gapMm;
        return squared(centreX2() - nearestX2, centreY2() - nearestY2) >= reach * reach;
    }

    private long right() {
        return (long) xMm + widthMm;
    }

    private long back() {
        return (long) yMm + depthMm;
    }

    private long centreX2() {
        return 2L * xMm + widthMm;
    }

    private long centreY2() {
        return 2L * yMm + depthMm;
    }

    private static long squared(long across, long along) {
        long dx = Math.min(FAR, Math.abs(across));
        long dy = Math.min(FAR, Math.abs(along));
        return dx * dx + dy * dy;
    }
}
