package crumbclock.rules.fact;

import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;

/** One shelf of a store, by its number from 0 at the top. */
public record ShelfSpot(Store store, int index, Shelf shelf) {

    public String storeId() {
        return store.id();
    }

    public String shelfId() {
        return shelf.id();
    }
}
