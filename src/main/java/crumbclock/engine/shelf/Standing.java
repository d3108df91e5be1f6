package crumbclock.engine.shelf;

/**
 * Something that stands in a bay already and stays where it is.
 *
 * @param bay     index into the bays
 * @param xMm     left edge of its box as it stands (already turned); may lie outside the bay
 * @param yMm     front edge of its box
 * @param widthMm as it stands
 */
public record Standing(int bay, boolean round, int xMm, int yMm, int widthMm, int depthMm) {
}
