package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import crumbclock.domain.order.Cake;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.OrderTimes;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R16 hand-over: somebody hands over what is finished, not before it is wanted, and its times are told truly. */
final class HandOverRules {

    private HandOverRules() {
    }

    /** An order that is not set aside has its hand-over step in the timetable. */
    static Constraint r16Placed(ConstraintFactory factory) {
        return made(factory)
                .filter(times -> !times.isSetAside() && times.handStart().isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((times, score) -> Cause.of("", moment(times),
                        "nobody hands over order " + times.orderId() + ": " + times.handOver().stepId()
                                + " is not placed",
                        times.orderId()))
                .asConstraint(ConstraintNames.of(Rule.R16, "placed"));
    }

    /** Nobody is at the door before the hand-over may be. */
    static Constraint r16NotTooEarly(ConstraintFactory factory) {
        return made(factory)
                .filter(times -> !times.isSetAside() && times.moment().isPresent()
                        && times.moment().getAsLong() < times.handOver().from())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((times, score) -> Cause.of("", moment(times),
                        "order " + times.orderId() + " is handed over "
                                + (times.handOver().from() - times.moment().getAsLong()) + " min before it may be",
                        times.orderId()))
                .asConstraint(ConstraintNames.of(Rule.R16, "not too early"));
    }

    /** All work on the order's cakes is over when its hand-over begins. */
    static Constraint r16Finished(ConstraintFactory factory) {
        return made(factory)
                .filter(times -> times.handStart().isPresent())
                .join(Cake.class, Joiners.equal(OrderTimes::orderId, Cake::orderId))
                .join(TimedStep.class, Joiners.equal((times, cake) -> cake.id(), TimedStep::ownerId))
                .filter((times, cake, step) -> !step.id().equals(times.handOver().stepId())
                        && step.end() > times.handStart().getAsLong())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((times, cake, step, score) -> Cause.of("",
                        new Span((int) times.handStart().getAsLong(), step.end()),
                        step.id() + " ends " + (step.end() - times.handStart().getAsLong())
                                + " min after the hand-over of order " + times.orderId() + " begins",
                        times.orderId(), step.id()))
                .asConstraint(ConstraintNames.of(Rule.R16, "finished"));
    }

    /** What the timetable tells of an order's times is what its steps give. */
    static Constraint r16TimesTold(ConstraintFactory factory) {
        return made(factory)
                .filter(times -> times.isComplete() && !isToldTruly(times))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((times, score) -> Cause.of("", moment(times),
                        "order " + times.orderId() + " is told as ready " + times.outcome().readyMinute() + ", handed over "
                                + times.outcome().handMinute() + ", buffer " + times.outcome().bufferMinutes() + ", late "
                                + times.outcome().lateMinutes() + "; its steps give " + times.ready().getAsLong() + ", "
                                + times.moment().getAsLong() + ", " + times.buffer().getAsLong() + ", "
                                + times.lateMinutes(),
                        times.orderId()))
                .asConstraint(ConstraintNames.of(Rule.R16, "times told"));
    }

    private static UniConstraintStream<OrderTimes> made(ConstraintFactory factory) {
        return factory.forEach(OrderTimes.class).filter(times -> times.outcome().possible());
    }

    private static boolean isToldTruly(OrderTimes times) {
        Outcome told = times.outcome();
        return told.readyMinute() == times.ready().getAsLong() && told.handMinute() == times.moment().getAsLong()
                && told.bufferMinutes() == times.buffer().getAsLong() && told.lateMinutes() == times.lateMinutes();
    }

    private static Span moment(OrderTimes times) {
        int minute = (int) times.moment().orElse(times.handOver().until());
        return new Span(minute, minute);
    }
}
