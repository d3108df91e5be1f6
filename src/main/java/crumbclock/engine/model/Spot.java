package crumbclock.engine.model;

import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;

/** One shelf of one store; the compiled problem numbers all of them through, store by store from the top down. */
public record Spot(int index, Store store, Shelf shelf, int level) {
}
