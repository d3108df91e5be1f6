package crumbclock.app.promise;

import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.Price;
import crumbclock.domain.work.Wait;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The problem as the search gets it: what the others are to be spared weighs so much more than the new order, or the other way
 * round, that one never pays for the other.
 */
final class Terms {

    /** A minute of one weighs more than all minutes of the other within a day. */
    private static final int FAR_ABOVE = 10_000;
    /** Less, so that no order is given up for an hour or two. */
    private static final int ABOVE = 1_000;

    private final Problem asked;
    private final String orderId;
    private final Map<String, Outcome> before = new LinkedHashMap<>();

    Terms(Problem asked, Plan have, String orderId) {
        this.asked = asked;
        this.orderId = orderId;
        have.timetable().outcomes().forEach(outcome -> before.put(outcome.orderId(), outcome));
    }

    /** The problem with the new order in another window and everything else as it is. */
    Problem promised(int from, int until) {
        return asked.withOrders(asked.orders().stream().map(order -> order.id().equals(orderId) ? in(order, from, until, order.importance(),
                order.bufferWishMinutes()) : order).toList());
    }

    /**
     * The problem for the search.
     *
     * @param from  the new order is not handed over before this minute
     * @param until minutes after this one count as late
     */
    Problem of(Price price, int from, int until) {
        List<Order> orders = asked.orders().stream().map(order -> order.id().equals(orderId)
                ? in(order, from, until, price == Price.ANY_PRICE ? ABOVE : 1, 0) : other(order, price)).toList();
        Problem problem = asked.withOrders(orders);
        return price == Price.NOBODY_WORSE ? problem.withWaits(asked.waits().stream().map(this::keepingBuffers).toList()) : problem;
    }

    private static Order in(Order order, int from, int until, int importance, int buffer) {
        HandOver old = order.handOver();
        return new Order(order.id(), order.title(), order.cakes(), new HandOver(old.way(), old.stepId(), old.offsetMinutes(), from, until),
                importance, buffer);
    }

    /** One that is late already may stay as late as it is. */
    private Order other(Order order, Price price) {
        Outcome known = before.get(order.id());
        if (price == Price.ANY_PRICE || known == null || !known.possible()) {
            return order;
        }
        HandOver own = order.handOver();
        int until = own.way() == HandOverWay.SET_ASIDE && price == Price.NOBODY_WORSE ? known.readyMinute()
                : Math.max(own.until(), known.handMinute());
        return in(order, own.from(), until, order.importance() * FAR_ABOVE, order.bufferWishMinutes());
    }

    /** What is finished stays ready as long before its hand-over as people know. */
    private Wait keepingBuffers(Wait wait) {
        for (Order order : asked.orders()) {
            Outcome known = before.get(order.id());
            if (known != null && known.possible() && wait.toStepId().equals(order.handOver().stepId())
                    && order.cakes().stream().anyMatch(cake -> cake.finishStepId().equals(wait.fromStepId()))) {
                int least = Math.min(wait.mostMinutes(), Math.max(wait.leastMinutes(), known.bufferMinutes()));
                return new Wait(wait.fromStepId(), wait.toStepId(), least, wait.mostMinutes());
            }
        }
        return wait;
    }
}
