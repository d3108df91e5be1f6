package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;

/**
 * A fridge, freezer, cool room or ambient cupboard: shelves from the top down.
 *
 * @param kind      one of the kinds with shelves
 * @param gapMm     air between any two items on one shelf (rule R10), measured between the nearest points
 * @param wallGapMm air between an item and the shelf's edge
 * @param warmestInC nothing warmer goes in (rule R11)
 * @param humid     sugar-paste finishes keep out (rule R11)
 * @param shelves   from the top down; index 0 is the highest
 * @param away      when the store cannot be used
 */
public record Store(String id, String name, PlaceKind kind, int gapMm, int wallGapMm, int warmestInC, boolean humid,
        List<Shelf> shelves, List<Span> away) {

    public Store {
        if (!kind.hasShelves()) {
            throw new IllegalArgumentException("store " + id + ": " + kind + " is a surface, not a store");
        }
        shelves = List.copyOf(shelves);
        away = List.copyOf(away);
    }
}
