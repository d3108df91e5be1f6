package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.KeptStep;
import crumbclock.domain.problem.Weights;
import crumbclock.rules.fact.TimedStep;

/** W08 keep to the known plan: what people have been told moves little, and the less the sooner it is due. */
final class KeptWishes {

    private KeptWishes() {
    }

    /** Minutes that a step moves, up to {@link KeptPlan#MOST_MOVED}. */
    static Constraint w08Moved(ConstraintFactory factory) {
        return factory.forEach(KeptStep.class)
                .join(TimedStep.class, Joiners.equal(KeptStep::stepId, TimedStep::id))
                .filter((told, timed) -> told.start() != timed.start())
                .join(KeptPlan.class)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (told, timed, kept, weights) ->
                        (long) moved(told, timed) * nearness(told, timed, kept) * weights.movedMinute())
                .justifyWith((told, timed, kept, weights, score) -> Cause.of("",
                        Cause.between(told.start(), timed.start()),
                        timed.id() + " begins " + Math.abs((long) timed.start() - told.start()) + " min "
                                + (timed.start() < told.start() ? "earlier" : "later") + " than people know",
                        timed.id()))
                .asConstraint(ConstraintNames.of(Wish.W08, "moved"));
    }

    /** Each person who works on a step that somebody else was to work on. */
    static Constraint w08OtherHands(ConstraintFactory factory) {
        return factory.forEach(KeptStep.class)
                .join(TimedStep.class, Joiners.equal(KeptStep::stepId, TimedStep::id))
                .filter((told, timed) -> newHands(told, timed) > 0)
                .join(KeptPlan.class)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (told, timed, kept, weights) ->
                        newHands(told, timed) * nearness(told, timed, kept) * weights.otherHands())
                .justifyWith((told, timed, kept, weights, score) -> Cause.of("", timed.span(),
                        newHands(told, timed) + " who work on " + timed.id() + " did not know of it", timed.id()))
                .asConstraint(ConstraintNames.of(Wish.W08, "other hands"));
    }

    /** Each touch that somebody else was to do. */
    static Constraint w08OtherTouch(ConstraintFactory factory) {
        return factory.forEach(KeptStep.class)
                .join(TimedStep.class, Joiners.equal(KeptStep::stepId, TimedStep::id))
                .join(PlacedTouch.class, Joiners.equal((told, timed) -> told.stepId(), PlacedTouch::stepId),
                        Joiners.filtering((told, timed, touch) -> !touch.personId().equals(
                                touch.at() == TouchEnd.PUT_IN ? told.putIn() : told.takeOut())))
                .join(KeptPlan.class)
                .map((told, timed, touch, kept) -> nearness(told, timed, kept), (told, timed, touch, kept) -> touch)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (nearness, touch, weights) -> nearness * weights.otherHands())
                .justifyWith((nearness, touch, weights, score) -> Cause.of(touch.personId(), touch.when(),
                        touch.personId() + " did not know of a touch of " + touch.stepId(), touch.stepId()))
                .asConstraint(ConstraintNames.of(Wish.W08, "other touch"));
    }

    private static int moved(KeptStep told, TimedStep timed) {
        return (int) Math.min(KeptPlan.MOST_MOVED, Math.abs((long) timed.start() - told.start()));
    }

    private static long newHands(KeptStep told, TimedStep timed) {
        return timed.placed().work().stream().map(PersonWork::personId).distinct()
                .filter(person -> !told.people().contains(person)).count();
    }

    /** By the earlier of the two starts: who was to begin soon must be told soon, and who is to begin soon, too. */
    private static long nearness(KeptStep told, TimedStep timed, KeptPlan kept) {
        long lead = Math.min(told.start(), timed.start()) - (long) kept.now();
        if (lead < KeptPlan.SOON_MINUTES) {
            return KeptPlan.SOON_FACTOR;
        }
        return lead < KeptPlan.DAY_MINUTES ? KeptPlan.DAY_FACTOR : 1;
    }
}
