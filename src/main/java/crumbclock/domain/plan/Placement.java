package crumbclock.domain.plan;

import crumbclock.units.Span;

/**
 * Where one piece stands in a store, for the whole of its step: it does not wander (rule R10).
 *
 * @param piece  0 to the form's pieces − 1
 * @param xMm    from the shelf's left edge to the footprint's left edge (of the square round a circle)
 * @param yMm    from the shelf's front edge to the footprint's front edge
 * @param turned by a quarter: width and depth exchanged
 * @param when   equals the step's span
 */
public record Placement(String stepId, int piece, String storeId, String shelfId, int xMm, int yMm, boolean turned,
        Span when) {
}
