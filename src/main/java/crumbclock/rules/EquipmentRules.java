package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sum;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.HeldUnit;
import crumbclock.rules.fact.PieceNeed;
import crumbclock.rules.fact.PoolDemand;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R06 equipment and surfaces, the equipment: pieces of pools, how long they are held, and the cleaning between. */
final class EquipmentRules {

    private EquipmentRules() {
    }

    /** A step takes exactly as many pieces of each pool as it needs. */
    static Constraint r06Pieces(ConstraintFactory factory) {
        return factory.forEach(PoolDemand.class)
                .filter(demand -> demand.given() != demand.needed())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((demand, score) -> Cause.of(demand.poolId(), demand.when(),
                        demand.stepId() + " takes " + demand.given() + " pieces of " + demand.poolId() + "; it needs "
                                + demand.needed(),
                        demand.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "pieces"));
    }

    /** A piece in use is one that the pool has. */
    static Constraint r06KnownPiece(ConstraintFactory factory) {
        return factory.forEach(HeldUnit.class)
                .ifNotExists(Pool.class, Joiners.equal(HeldUnit::poolId, Pool::id),
                        Joiners.filtering((held, pool) -> hasUnit(pool, held.unit())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((held, score) -> Cause.of(held.poolId(), held.when(),
                        held.stepId() + " takes piece " + held.unit() + " of " + held.poolId() + ", which there is not",
                        held.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "known piece"));
    }

    /** A step holds its pieces from its own start. */
    static Constraint r06From(ConstraintFactory factory) {
        return factory.forEach(HeldUnit.class)
                .filter(held -> held.from() != held.stepStart())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((held, score) -> Cause.of(held.poolId(), held.when(),
                        held.stepId() + " takes piece " + held.unit() + " of " + held.poolId() + " at minute "
                                + held.from() + "; it starts at " + held.stepStart(),
                        held.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "from"));
    }

    /** A step holds its pieces to the end of the step that gives them back: as many to each end as there are needs. */
    static Constraint r06Until(ConstraintFactory factory) {
        var given = factory.forEach(HeldUnit.class)
                .map(held -> new Return(held.stepId(), held.poolId(), held.use().until()), held -> -1);
        return factory.forEach(PieceNeed.class)
                .join(TimedStep.class, Joiners.equal(need -> need.need().untilStepId(), TimedStep::id))
                .map((need, last) -> new Return(need.stepId(), need.poolId(), last.end()),
                        (need, last) -> need.need().units())
                .concat(given)
                .groupBy((back, balance) -> back, sum((back, balance) -> balance))
                .filter((back, balance) -> balance < 0)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((back, balance, score) -> Cause.of(back.poolId(), new Span(back.until(), back.until()),
                        back.stepId() + " gives back " + -balance + " pieces of " + back.poolId() + " at minute "
                                + back.until() + ", which is not the end of the step that gives them back",
                        back.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "until"));
    }

    /** What goes into one piece is no more than it holds. */
    static Constraint r06Capacity(ConstraintFactory factory) {
        return factory.forEach(PieceNeed.class)
                .join(Pool.class, Joiners.equal(PieceNeed::poolId, Pool::id))
                .filter((need, pool) -> need.need().amount() > pool.capacity())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((need, pool, score) -> Cause.of(pool.id(), need.when(),
                        need.stepId() + " puts " + need.need().amount() + " into one piece of " + pool.name()
                                + ", which holds " + pool.capacity(),
                        need.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "capacity"));
    }

    /** One piece serves one step at a time, with its cleaning minutes between; a use of no minutes is none. */
    static Constraint r06OneUseAtATime(ConstraintFactory factory) {
        return factory.forEach(HeldUnit.class)
                .filter(held -> !held.when().isEmpty())
                .join(factory.forEach(HeldUnit.class).filter(held -> !held.when().isEmpty()),
                        Joiners.equal(HeldUnit::poolId), Joiners.equal(HeldUnit::unit),
                        Joiners.overlapping(HeldUnit::from, HeldUnit::cleanAt),
                        Joiners.filtering((one, other) -> one.no() < other.no()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(one.poolId(), Cause.shared(one.when(), other.when()),
                        "piece " + one.unit() + " of " + one.poolId() + " serves " + one.stepId() + " and "
                                + other.stepId() + " at once or without the " + one.cleanMinutes()
                                + " cleaning minutes between",
                        one.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "one use at a time"));
    }

    /** No piece is used while it is away. */
    static Constraint r06PieceAway(ConstraintFactory factory) {
        return factory.forEach(HeldUnit.class)
                .join(Pool.class, Joiners.equal(HeldUnit::poolId, Pool::id))
                .filter((held, pool) -> pool.away().stream()
                        .anyMatch(away -> away.unit() == held.unit() && away.when().overlaps(held.when())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((held, pool, score) -> Cause.of(pool.id(), held.when(),
                        held.stepId() + " uses piece " + held.unit() + " of " + pool.name() + " while it is away",
                        held.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "piece away"));
    }

    /** Nothing uses a piece during its full clean. */
    static Constraint r06InUseWhileCleaned(ConstraintFactory factory) {
        return factory.forEach(Cleaning.class)
                .join(HeldUnit.class, Joiners.equal(Cleaning::poolId, HeldUnit::poolId),
                        Joiners.equal(Cleaning::unit, HeldUnit::unit),
                        Joiners.filtering((cleaning, held) -> cleaning.when().overlaps(held.when())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((cleaning, held, score) -> Cause.of(held.poolId(),
                        Cause.shared(cleaning.when(), held.when()),
                        held.stepId() + " uses piece " + held.unit() + " of " + held.poolId() + " during its full clean",
                        held.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "in use while cleaned"));
    }

    /** A full clean is of a piece that there is. */
    static Constraint r06KnownCleaning(ConstraintFactory factory) {
        return factory.forEach(Cleaning.class)
                .ifNotExists(Pool.class, Joiners.equal(Cleaning::poolId, Pool::id),
                        Joiners.filtering((cleaning, pool) -> hasUnit(pool, cleaning.unit())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((cleaning, score) -> Cause.of(cleaning.poolId(), cleaning.when(),
                        "piece " + cleaning.unit() + " of " + cleaning.poolId() + " is cleaned, which there is not"))
                .asConstraint(ConstraintNames.of(Rule.R06, "known cleaning"));
    }

    private static boolean hasUnit(Pool pool, int unit) {
        return unit >= 0 && unit < pool.count();
    }

    /** Pieces of a pool that a step gives back at one minute. */
    private record Return(String stepId, String poolId, int until) {
    }
}
