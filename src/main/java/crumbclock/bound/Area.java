package crumbclock.bound;

import crumbclock.domain.work.Footprint;

/** How much of a board things take, with the gap between them. */
final class Area {

    /** A little below a quarter of π: what is taken must never be told as more than it is. */
    private static final double QUARTER_PI = 0.785398;

    private Area() {
    }

    /**
     * mm² of the thing with half the gap all round. Things that keep the gap do not overlap even so, and stay within the
     * board made larger by half a gap.
     */
    static long taken(Footprint seen, int gapMm) {
        if (seen.round()) {
            long across = seen.widthMm() + gapMm;
            return (long) (QUARTER_PI * across * across);
        }
        return (long) seen.widthMm() * seen.depthMm() + (long) gapMm * (seen.widthMm() + seen.depthMm())
                + (long) (QUARTER_PI * gapMm * gapMm);
    }

    /** mm² of a board without its walls' gap, made larger by half the gap between things. */
    static long given(int widthMm, int depthMm, int wallGapMm, int gapMm) {
        long width = (long) widthMm - 2 * wallGapMm + gapMm;
        long depth = (long) depthMm - 2 * wallGapMm + gapMm;
        return width <= 0 || depth <= 0 ? 0 : width * depth;
    }

    /**
     * Whether no two things of this size or larger stand on the board together: not even the circles inside them would,
     * each in an opposite corner.
     */
    static boolean isAlone(Footprint seen, int widthMm, int depthMm, int wallGapMm, int gapMm) {
        long across = Math.min(seen.widthMm(), seen.depthMm());
        long width = Math.max(0, widthMm - 2L * wallGapMm - across);
        long depth = Math.max(0, depthMm - 2L * wallGapMm - across);
        return width * width + depth * depth < (across + gapMm) * (across + gapMm);
    }
}
