package crumbclock.engine.shelf;

/**
 * Where one piece stands.
 *
 * @param bay    index into the bays
 * @param xMm    left edge of its box, from the bay's left edge
 * @param yMm    front edge of its box, from the bay's front edge
 * @param turned by a quarter: width and depth exchanged
 */
public record Spot(int bay, int xMm, int yMm, boolean turned) {
}
