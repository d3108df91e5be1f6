package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.count;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.work.Step;
import crumbclock.rules.fact.Claim;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R17 complete: every order is told of once, and exactly the steps of those that are made are placed, once each. */
final class CompletenessRules {

    private static final Span NEVER = new Span(0, 0);

    private CompletenessRules() {
    }

    /** Every step that an order which is made needs is placed. */
    static Constraint r17Missing(ConstraintFactory factory) {
        return factory.forEach(Step.class)
                .ifExists(Claim.class, Joiners.equal(Step::ownerId, Claim::ownerId),
                        Joiners.filtering((step, claim) -> claim.isMade()))
                .ifNotExists(TimedStep.class, Joiners.equal(Step::id, TimedStep::id))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", NEVER, step.id() + " is not placed, though its order is made",
                        step.id(), step.ownerId()))
                .asConstraint(ConstraintNames.of(Rule.R17, "missing"));
    }

    /** No step is placed twice. */
    static Constraint r17Twice(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .groupBy(TimedStep::id, count())
                .filter((step, times) -> times > 1)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, times, score) -> Cause.of("", NEVER, step + " is placed " + times + " times", step))
                .asConstraint(ConstraintNames.of(Rule.R17, "twice"));
    }

    /** No step is placed that no order needs, unless it has happened already. */
    static Constraint r17Needless(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .ifNotExists(Claim.class, Joiners.equal(TimedStep::ownerId, Claim::ownerId),
                        Joiners.filtering((step, claim) -> claim.fate() != Claim.Fate.NOT_MADE))
                .ifNotExists(FixedStep.class, Joiners.equal(TimedStep::id, fixed -> fixed.step().stepId()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        step.id() + " is placed, though no order that is made needs it", step.id(), step.ownerId()))
                .asConstraint(ConstraintNames.of(Rule.R17, "needless"));
    }

    /** What the problem does not know. */
    static Constraint r17Stray(ConstraintFactory factory) {
        return Strays.of(factory, Rule.R17);
    }

    /** No order is dropped silently. */
    static Constraint r17OrderNotTold(ConstraintFactory factory) {
        return factory.forEach(Order.class)
                .ifNotExists(Outcome.class, Joiners.equal(Order::id, Outcome::orderId))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((order, score) -> Cause.of("", NEVER,
                        "nothing is told of what becomes of order " + order.id(), order.id()))
                .asConstraint(ConstraintNames.of(Rule.R17, "order not told"));
    }

    /** No order has two outcomes. */
    static Constraint r17OrderToldTwice(ConstraintFactory factory) {
        return factory.forEach(Outcome.class)
                .groupBy(Outcome::orderId, count())
                .filter((order, outcomes) -> outcomes > 1)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((order, outcomes, score) -> Cause.of("", NEVER,
                        "order " + order + " has " + outcomes + " outcomes", order))
                .asConstraint(ConstraintNames.of(Rule.R17, "order told twice"));
    }

    /** No outcome is of an order that there is not. */
    static Constraint r17UnknownOrder(ConstraintFactory factory) {
        return factory.forEach(Outcome.class)
                .ifNotExists(Order.class, Joiners.equal(Outcome::orderId, Order::id))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((outcome, score) -> Cause.of("", NEVER,
                        "the timetable tells of order " + outcome.orderId() + ", which the problem does not know",
                        outcome.orderId()))
                .asConstraint(ConstraintNames.of(Rule.R17, "unknown order"));
    }

    /** An order that is not possible has a reason. */
    static Constraint r17NoReason(ConstraintFactory factory) {
        return factory.forEach(Outcome.class)
                .filter(outcome -> !outcome.possible() && outcome.reasons().isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((outcome, score) -> Cause.of("", NEVER,
                        "order " + outcome.orderId() + " is not possible, and no reason is given", outcome.orderId()))
                .asConstraint(ConstraintNames.of(Rule.R17, "no reason"));
    }
}
