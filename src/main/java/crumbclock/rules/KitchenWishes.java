package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.max;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.Weights;
import crumbclock.rules.fact.HeatRun;
import crumbclock.rules.fact.OnShelf;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** The wishes about the kitchen: W05 oven used well, W06 shelves easy to reach, W07 done early. */
final class KitchenWishes {

    private KitchenWishes() {
    }

    /** Each heat-up, and each minute that an oven is on. */
    static Constraint w05Oven(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (run, weights) -> weights.heatUp()
                        + (long) weights.ovenMinute() * (run.until() - run.from()))
                .justifyWith((run, weights, score) -> Cause.of(run.cavityId(), run.on(),
                        "the oven is on at " + run.temperatureC() + " °C for " + (run.until() - run.from()) + " min"))
                .asConstraint(ConstraintNames.of(Wish.W05, "oven"));
    }

    /** Going in or coming out behind something that stands in front then. */
    static Constraint w06Behind(ConstraintFactory factory) {
        return factory.forEach(OnShelf.class)
                .filter(item -> !item.isGoods())
                .join(OnShelf.class, Joiners.equal(OnShelf::storeId), Joiners.equal(OnShelf::shelfId),
                        Joiners.overlapping(OnShelf::start, OnShelf::end),
                        Joiners.filtering((item, front) -> !item.stepId().equals(front.stepId())
                                && timesInTheWay(item, front) > 0))
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (item, front, weights) -> (long) timesInTheWay(item, front) * weights.behind())
                .justifyWith((item, front, weights, score) -> Cause.of(
                        ShelfRules.shelfName(item.storeId(), item.shelfId()), Cause.shared(item.when(), front.when()),
                        front.name() + " stands in front of " + item.name() + " when that goes in or comes out",
                        item.stepId()))
                .asConstraint(ConstraintNames.of(Wish.W06, "behind"));
    }

    /** The end of the last step. */
    static Constraint w07End(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .groupBy(max(TimedStep::end))
                .filter(end -> end > 0)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (end, weights) -> (long) end * weights.endMinute())
                .justifyWith((end, weights, score) -> Cause.of("", new Span(end, end),
                        "the last step ends " + end + " min after the problem's start"))
                .asConstraint(ConstraintNames.of(Wish.W07, "end"));
    }

    private static int timesInTheWay(OnShelf item, OnShelf front) {
        if (front.shape().yMm() >= item.shape().yMm() || !front.shape().isInLineWith(item.shape())) {
            return 0;
        }
        return (front.isThereAcross(item.start()) ? 1 : 0) + (front.isThereAcross(item.end()) ? 1 : 0);
    }
}
