package crumbclock.engine.shelf;

/**
 * One thing to be placed, seen from above.
 *
 * @param round   a circle; then width and depth are both its diameter
 * @param widthMm 1 to {@link SpotFinder#MOST_MM}
 * @param depthMm 1 to {@link SpotFinder#MOST_MM}
 * @param mayTurn whether it may stand turned by a quarter
 */
public record Piece(boolean round, int widthMm, int depthMm, boolean mayTurn) {

    public Piece {
        SpotFinder.check(round, widthMm, depthMm);
        mayTurn = mayTurn && widthMm != depthMm; // turning a square or a circle changes nothing
    }

    /** A circle. */
    public static Piece ofDiameter(int diameterMm) {
        return new Piece(true, diameterMm, diameterMm, false);
    }

    /** Width as it stands. */
    int widthMm(boolean turned) {
        return turned ? depthMm : widthMm;
    }

    /** Depth as it stands. */
    int depthMm(boolean turned) {
        return turned ? widthMm : depthMm;
    }

    /** What it takes of a bay when every piece is grown by half the gap all round, mm². */
    double areaWithGap(int gapMm) {
        return round
                ? Math.PI / 4 * (widthMm + gapMm) * (widthMm + gapMm)
                : (double) widthMm * depthMm + (double) gapMm * (widthMm + depthMm) + Math.PI / 4 * gapMm * gapMm;
    }
}
