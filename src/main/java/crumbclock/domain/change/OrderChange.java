package crumbclock.domain.change;

import crumbclock.domain.request.OrderRequest;

/** A change of what was asked for. */
public sealed interface OrderChange extends Change {

    /** One order more, at the end of all others; no other order has its id. */
    record Added(OrderRequest order) implements OrderChange {
    }

    /** An order that is not made after all. */
    record Dropped(String orderId) implements OrderChange {
    }

    /** An order in another way: the one with the same id is asked for like this instead, at its old place. */
    record Replaced(OrderRequest order) implements OrderChange {
    }
}
