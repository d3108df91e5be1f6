package crumbclock.domain.promise;

import java.util.List;

/**
 * What a plan with the new order costs the others, against the plan that people have.
 *
 * @param orders each other order, in the problem's order
 * @param people each person, in the kitchen's order
 */
public record Toll(List<OrderEffect> orders, List<PersonEffect> people) {

    public Toll {
        orders = List.copyOf(orders);
        people = List.copyOf(people);
    }

    /** What this plan asks the other orders to pay. */
    public Price price() {
        if (orders.stream().noneMatch(OrderEffect::isWorse)) {
            return Price.NOBODY_WORSE;
        }
        return orders.stream().noneMatch(OrderEffect::isLater) ? Price.ALL_ON_TIME : Price.ANY_PRICE;
    }

    /** Whether an order is not made any more. */
    public boolean dropsAny() {
        return orders.stream().anyMatch(one -> one.before().possible() && !one.after().possible());
    }

    /** Minutes later than before, of all others together. */
    public int laterMinutes() {
        return orders.stream().filter(OrderEffect::isLater)
                .mapToInt(one -> one.after().lateMinutes() - one.before().lateMinutes()).sum();
    }

    /** Steps of others that move. */
    public int moved() {
        return orders.stream().mapToInt(OrderEffect::moved).sum();
    }
}
