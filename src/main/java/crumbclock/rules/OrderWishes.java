package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.rules.fact.OrderTimes;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** Lateness (medium), and the wishes about orders: W01 a buffer before the hand-over, W02 freshness. */
final class OrderWishes {

    private OrderWishes() {
    }

    /** Minutes late, by importance, and something for being late at all. */
    static Constraint lateOrder(ConstraintFactory factory) {
        return factory.forEach(OrderTimes.class)
                .filter(times -> times.outcome().possible() && times.lateMinutes() > 0)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_MEDIUM, (times, weights) -> times.lateMinutes()
                        * times.order().importance() * weights.lateMinute() + weights.lateOrder())
                .justifyWith((times, weights, score) -> Cause.of("", at(times.handOver().until()),
                        "order " + times.orderId() + " is " + times.lateMinutes() + " min late", times.orderId()))
                .asConstraint(ConstraintNames.lateness("late"));
    }

    /** An order that is not made costs far more than any lateness. */
    static Constraint lateNotPossible(ConstraintFactory factory) {
        return factory.forEach(OrderTimes.class)
                .filter(times -> !times.outcome().possible())
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_MEDIUM,
                        (times, weights) -> (long) weights.notPossible() * times.order().importance())
                .justifyWith((times, weights, score) -> Cause.of("", at(times.handOver().until()),
                        "order " + times.orderId() + " is not possible", times.orderId()))
                .asConstraint(ConstraintNames.lateness("not possible"));
    }

    /** Minutes that the buffer is shorter than wished; a buffer below nothing counts in full. */
    static Constraint w01Buffer(ConstraintFactory factory) {
        return factory.forEach(OrderTimes.class)
                .filter(times -> times.outcome().possible() && shortBy(times) > 0)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (times, weights) -> shortBy(times) * weights.bufferMinute())
                .justifyWith((times, weights, score) -> Cause.of("", at(times.handOver().until()),
                        "order " + times.orderId() + " is ready " + times.buffer().getAsLong()
                                + " min before its hand-over; " + times.order().bufferWishMinutes() + " are wished for",
                        times.orderId()))
                .asConstraint(ConstraintNames.of(Wish.W01, "buffer"));
    }

    /** Minutes beyond a freshness wish. */
    static Constraint w02Freshness(ConstraintFactory factory) {
        return factory.forEach(FreshnessWish.class)
                .join(TimedStep.class, Joiners.equal(FreshnessWish::fromStepId, TimedStep::id))
                .join(OrderTimes.class, Joiners.equal((wish, from) -> wish.orderId(), OrderTimes::orderId))
                .filter((wish, from, times) -> times.outcome().possible() && staleBy(wish, from, times) > 0)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (wish, from, times, weights) -> staleBy(wish, from, times) * weights.staleMinute())
                .justifyWith((wish, from, times, weights, score) -> Cause.of("", from.span(),
                        from.id() + " ends " + (staleBy(wish, from, times) + wish.wishMinutes())
                                + " min before the hand-over; " + wish.wishMinutes() + " are wished for at most",
                        from.id(), times.orderId()))
                .asConstraint(ConstraintNames.of(Wish.W02, "freshness"));
    }

    private static long shortBy(OrderTimes times) {
        Order order = times.order();
        return times.buffer().isPresent() ? order.bufferWishMinutes() - times.buffer().getAsLong() : 0;
    }

    private static long staleBy(FreshnessWish wish, TimedStep from, OrderTimes times) {
        return times.fetched().isPresent() ? times.fetched().getAsLong() - from.end() - wish.wishMinutes() : 0;
    }

    private static Span at(int minute) {
        return new Span(minute, minute);
    }
}
