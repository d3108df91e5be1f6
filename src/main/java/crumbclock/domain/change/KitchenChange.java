package crumbclock.domain.change;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.units.Span;

/** A change of people, ovens, stores, surfaces or equipment. Times are minutes from the problem's start, inside the problem. */
public sealed interface KitchenChange extends Change {

    /** What can be away. A cavity goes by its full id, such as {@code deck/upper}; a shelf by {@code store/shelf}. */
    enum Kind {
        PERSON, OVEN, STORE, SHELF, SURFACE, EQUIPMENT
    }

    /**
     * Something that is not there for a time.
     *
     * @param pieces of equipment: how many of the pool, at least 1, counted from its last piece; 0 for everything else
     */
    record Away(Kind kind, String id, int pieces, Span when) implements KitchenChange {
    }

    /** A person who is there at that time, too: comes earlier, leaves later, or comes once more. */
    record MoreHours(String personId, Span when) implements KitchenChange {
    }

    /**
     * People and things that come in addition; no id of theirs is taken.
     *
     * @param parts its name and opening hours mean nothing
     */
    record Brought(Kitchen parts) implements KitchenChange {
    }

    /** A shelf like another one of the same store, empty, below all others. */
    record ShelfLike(String storeId, String shelfId, String newId) implements KitchenChange {
    }

    /** More pieces of a pool, at least 1. */
    record MorePieces(String poolId, int pieces) implements KitchenChange {
    }

    /** Something that stands on a shelf for a time. */
    record GoodsOn(String storeId, String shelfId, Goods goods) implements KitchenChange {
    }
}
