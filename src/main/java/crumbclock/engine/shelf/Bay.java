package crumbclock.engine.shelf;

/**
 * The inside of one shelf or rack.
 *
 * @param widthMm 0 to {@link SpotFinder#MOST_MM}
 * @param depthMm 0 to {@link SpotFinder#MOST_MM}
 */
public record Bay(int widthMm, int depthMm) {

    public Bay {
        if (widthMm < 0 || depthMm < 0 || widthMm > SpotFinder.MOST_MM || depthMm > SpotFinder.MOST_MM) {
            throw new IllegalArgumentException(
                    "a bay measures 0 to " + SpotFinder.MOST_MM + " mm: " + widthMm + " × " + depthMm);
        }
    }
}
