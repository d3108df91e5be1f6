package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.Bake;
import crumbclock.rules.fact.HeatRun;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R07 oven room, the bakes: cavities and temperatures ({@link PanRules} has the pans); R09 oven door. */
final class OvenRules {

    private OvenRules() {
    }

    /** A bake is in a cavity that the kitchen has; what is no bake is in none. */
    static Constraint r07Cavity(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.step().oven().isPresent() || !step.placed().cavityId().isEmpty())
                .ifNotExists(Cavity.class, Joiners.equal(step -> step.placed().cavityId(), Cavity::id),
                        Joiners.filtering((step, cavity) -> step.step().oven().isPresent()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of(step.placed().cavityId(), step.span(),
                        step.id() + (step.step().oven().isPresent() ? " bakes in \"" : " is no bake, yet is in \"")
                                + step.placed().cavityId() + "\"; a bake needs a cavity of the kitchen, others none",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R07, "cavity"));
    }

    /** Bakes that need heat at the same time in one cavity share one temperature. */
    static Constraint r07OneTemperature(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .join(Bake.class, Joiners.equal(Bake::cavityId), Joiners.overlapping(Bake::start, Bake::heatedEnd),
                        Joiners.filtering((one, other) -> one.no() < other.no()
                                && one.heated().overlaps(other.heated())
                                && one.oven().temperatureC() != other.oven().temperatureC()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(one.cavityId(),
                        Cause.shared(one.heated(), other.heated()),
                        one.stepId() + " bakes at " + one.oven().temperatureC() + " °C while " + other.stepId()
                                + " bakes at " + other.oven().temperatureC() + " °C",
                        one.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "one temperature"));
    }

    /** A cavity reaches the temperature of what bakes in it. */
    static Constraint r07Range(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .join(Cavity.class, Joiners.equal(Bake::cavityId, Cavity::id))
                .filter((bake, cavity) -> bake.oven().temperatureC() < cavity.leastC()
                        || bake.oven().temperatureC() > cavity.mostC())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((bake, cavity, score) -> Cause.of(cavity.id(), bake.span(),
                        bake.stepId() + " bakes at " + bake.oven().temperatureC() + " °C; " + cavity.name()
                                + " goes from " + cavity.leastC() + " to " + cavity.mostC() + " °C",
                        bake.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "range"));
    }

    /** Nothing bakes in a cavity that is away. */
    static Constraint r07BakeAway(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .join(Cavity.class, Joiners.equal(Bake::cavityId, Cavity::id))
                .filter((bake, cavity) -> cavity.away().stream().anyMatch(bake.span()::overlaps))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((bake, cavity, score) -> Cause.of(cavity.id(), bake.span(),
                        bake.stepId() + " bakes in " + cavity.name() + " while that is away", bake.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "bake away"));
    }

    /** No cavity is on while it is away. */
    static Constraint r07RunAway(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(Cavity.class, Joiners.equal(HeatRun::cavityId, Cavity::id))
                .filter((run, cavity) -> cavity.away().stream().anyMatch(run.on()::overlaps))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, cavity, score) -> Cause.of(cavity.id(), run.on(),
                        cavity.name() + " is on at " + run.temperatureC() + " °C while it is away"))
                .asConstraint(ConstraintNames.of(Rule.R07, "run away"));
    }

    /**
     * No pan goes in or out while another bake in that cavity is in its door-shut part. A bake without a touch still
     * goes in or out at one moment, which only counts strictly inside.
     */
    static Constraint r09DoorShut(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .join(Bake.class, Joiners.equal(Bake::cavityId),
                        Joiners.overlapping(Bake::shutStart, Bake::shutEnd, Bake::start, bake -> bake.end() + 1),
                        Joiners.filtering((shut, other) -> shut.no() != other.no()
                                && (opens(shut, other.goingIn()) || opens(shut, other.comingOut()))))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((shut, other, score) -> Cause.of(shut.cavityId(), shut.shut(),
                        other.stepId() + " goes in or out while the door must stay shut for " + shut.stepId(),
                        shut.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R09, "door shut"));
    }

    private static boolean opens(Bake shut, Span touch) {
        return Math.max(shut.shutStart(), touch.start()) < Math.min(shut.shutEnd(), touch.end())
                || touch.isEmpty() && shut.shutStart() < touch.start() && touch.start() < shut.shutEnd();
    }
}
