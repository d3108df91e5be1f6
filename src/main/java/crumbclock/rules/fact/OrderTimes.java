package crumbclock.rules.fact;

import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import java.util.OptionalLong;

/**
 * When an order that is made is ready and handed over, by its placed steps.
 *
 * @param outcome   what the timetable says of it
 * @param ready     latest end of its cakes' finish steps; empty when one of them is not placed
 * @param handStart start of its hand-over step; empty when it has none or that is not placed
 */
public record OrderTimes(Order order, Outcome outcome, OptionalLong ready, OptionalLong handStart) {

    public String orderId() {
        return order.id();
    }

    public HandOver handOver() {
        return order.handOver();
    }

    public boolean isSetAside() {
        return handOver().stepId().isEmpty();
    }

    public OptionalLong moment() {
        if (isSetAside()) {
            return ready;
        }
        return handStart.isPresent() ? OptionalLong.of(handStart.getAsLong() + handOver().offsetMinutes()) : handStart;
    }

    /** When it is eaten, for all we know: the moment, or {@code until} for an order set aside (wish W02). */
    public OptionalLong fetched() {
        return isSetAside() ? OptionalLong.of(handOver().until()) : moment();
    }

    /** May be negative, when the last cake is finished after the hand-over begins. */
    public OptionalLong buffer() {
        OptionalLong leaves = isSetAside() ? fetched() : handStart;
        return ready.isPresent() && leaves.isPresent()
                ? OptionalLong.of(leaves.getAsLong() - ready.getAsLong()) : OptionalLong.empty();
    }

    public long lateMinutes() {
        return moment().isPresent() ? Math.max(0, moment().getAsLong() - handOver().until()) : 0;
    }

    /** Whether all that this order needs for its times is placed; rule R17 tells what is missing. */
    public boolean isComplete() {
        return moment().isPresent() && ready.isPresent();
    }
}
