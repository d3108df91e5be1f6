package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.bi.BiJoiner;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.Bake;
import crumbclock.rules.fact.HeatRun;

/** R08 oven heat: preheating, changes of temperature, and cooling in the oven. */
final class HeatRules {

    /** What one run goes on from has begun before it: else two runs of no minutes would each be heated by the other. */
    private static final BiJoiner<HeatRun, HeatRun> BEGINS_BEFORE = Joiners.greaterThan(HeatRun::from);

    private HeatRules() {
    }

    /** A bake has its heat: a run of its cavity at its temperature that is ready before it and lasts as long. */
    static Constraint r08Heated(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .ifNotExists(HeatRun.class, Joiners.equal(Bake::cavityId, HeatRun::cavityId),
                        Joiners.equal(bake -> bake.oven().temperatureC(), HeatRun::temperatureC),
                        Joiners.greaterThanOrEqual(Bake::start, HeatRun::readyAt),
                        Joiners.lessThanOrEqual(Bake::heatedEnd, HeatRun::until))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((bake, score) -> Cause.of(bake.cavityId(), bake.heated(),
                        bake.stepId() + " bakes without " + bake.oven().temperatureC() + " °C all through", bake.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R08, "heated"));
    }

    /** A run is of a cavity that the kitchen has, and its minutes are in order. */
    static Constraint r08SoundRun(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .ifNotExists(Cavity.class, Joiners.equal(HeatRun::cavityId, Cavity::id),
                        Joiners.filtering((run, cavity) -> run.run().from() <= run.run().readyAt()
                                && run.run().readyAt() <= run.run().until()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, score) -> Cause.of(run.cavityId(), run.on(),
                        "an oven run of \"" + run.cavityId() + "\" from minute " + run.run().from() + ", ready at "
                                + run.run().readyAt() + ", until " + run.run().until() + " cannot be"))
                .asConstraint(ConstraintNames.of(Rule.R08, "sound run"));
    }

    /** A cavity is on at one temperature at a time. */
    static Constraint r08OneRunAtATime(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(HeatRun.class, Joiners.equal(HeatRun::cavityId),
                        Joiners.overlapping(HeatRun::from, HeatRun::until),
                        Joiners.filtering((one, other) -> one.no() < other.no() && one.on().overlaps(other.on())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(one.cavityId(), Cause.shared(one.on(), other.on()),
                        "the oven is on twice at once, at " + one.temperatureC() + " and " + other.temperatureC() + " °C"))
                .asConstraint(ConstraintNames.of(Rule.R08, "one run at a time"));
    }

    /** From cold, the oven has its preheating minutes. */
    static Constraint r08Preheat(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .ifNotExists(HeatRun.class, Joiners.equal(HeatRun::cavityId),
                        Joiners.equal(HeatRun::from, HeatRun::until), BEGINS_BEFORE)
                .join(Cavity.class, Joiners.equal(HeatRun::cavityId, Cavity::id))
                .filter((run, cavity) -> run.readyAt() - run.from() < cavity.preheatMinutes())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, cavity, score) -> Cause.of(cavity.id(), run.heatingUp(),
                        cavity.name() + " has " + (run.readyAt() - run.from()) + " min to heat up; it needs "
                                + cavity.preheatMinutes()))
                .asConstraint(ConstraintNames.of(Rule.R08, "preheat"));
    }

    /** From one temperature to the next, the oven has the minutes that the change takes. */
    static Constraint r08Change(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(HeatRun.class, Joiners.equal(HeatRun::cavityId),
                        Joiners.equal(HeatRun::from, HeatRun::until), BEGINS_BEFORE)
                .join(Cavity.class, Joiners.equal((run, before) -> run.cavityId(), Cavity::id))
                .filter((run, before, cavity) -> run.readyAt() - run.from()
                        < cavity.changeMinutes(before.temperatureC(), run.temperatureC()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, before, cavity, score) -> Cause.of(cavity.id(), run.heatingUp(),
                        cavity.name() + " has " + (run.readyAt() - run.from()) + " min to go from "
                                + before.temperatureC() + " to " + run.temperatureC() + " °C; it needs "
                                + cavity.changeMinutes(before.temperatureC(), run.temperatureC())))
                .asConstraint(ConstraintNames.of(Rule.R08, "change"));
    }

    /** Nothing is in the oven while it heats up or changes. */
    static Constraint r08EmptyWhileHeating(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(Bake.class, Joiners.equal(HeatRun::cavityId, Bake::cavityId),
                        Joiners.overlapping(HeatRun::from, HeatRun::readyAt, Bake::start, Bake::end))
                .filter((run, bake) -> run.heatingUp().overlaps(bake.span()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, bake, score) -> Cause.of(run.cavityId(),
                        Cause.shared(run.heatingUp(), bake.span()),
                        bake.stepId() + " is in the oven while it goes to " + run.temperatureC() + " °C", bake.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R08, "empty while heating"));
    }

    /** The oven is off while something cools in it. */
    static Constraint r08OffWhileCooling(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .join(HeatRun.class, Joiners.equal(Bake::cavityId, HeatRun::cavityId),
                        Joiners.overlapping(Bake::start, Bake::end, HeatRun::from, HeatRun::until))
                .filter((bake, run) -> bake.cooling().overlaps(run.on()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((bake, run, score) -> Cause.of(bake.cavityId(), Cause.shared(bake.cooling(), run.on()),
                        bake.stepId() + " cools in the oven, yet that is on", bake.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R08, "off while cooling"));
    }

    /** What cools in the oven is alone in it. */
    static Constraint r08AloneWhileCooling(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .filter(bake -> !bake.cooling().isEmpty())
                .join(Bake.class, Joiners.equal(Bake::cavityId), Joiners.overlapping(Bake::start, Bake::end))
                .filter((cooling, other) -> cooling.no() != other.no() && cooling.cooling().overlaps(other.span()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((cooling, other, score) -> Cause.of(cooling.cavityId(),
                        Cause.shared(cooling.cooling(), other.span()),
                        other.stepId() + " is in the oven while " + cooling.stepId() + " cools in it",
                        cooling.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R08, "alone while cooling"));
    }
}
