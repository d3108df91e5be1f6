package crumbclock.domain.kitchen;

import crumbclock.units.Span;

/**
 * Something that already stands on a shelf: a fixed rectangle for a stretch of time. It keeps the store's gap to
 * items of the plan like any other item does.
 */
public record Goods(String name, int xMm, int yMm, int widthMm, int depthMm, int heightMm, int massGrams, Span when) {
}
