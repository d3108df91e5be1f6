package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.FixedStep;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R15 what happened stays: finished, running and pinned steps are in the timetable exactly as recorded. */
final class FixedRules {

    private FixedRules() {
    }

    /** A recorded step has its times, people, equipment and places. */
    static Constraint r15Step(ConstraintFactory factory) {
        return factory.forEach(FixedStep.class)
                .ifNotExists(TimedStep.class, Joiners.equal(fixed -> fixed.step().stepId(), TimedStep::id),
                        Joiners.filtering((fixed, timed) -> timed.placed().equals(fixed.step())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((fixed, score) -> Cause.of("",
                        Cause.between(fixed.step().start(), fixed.step().end()),
                        fixed.step().stepId() + " is not in the timetable as it was recorded", fixed.step().stepId()))
                .asConstraint(ConstraintNames.of(Rule.R15, "step"));
    }

    /** Its touches are there, by the same people. */
    static Constraint r15Touches(ConstraintFactory factory) {
        return factory.forEach(FixedStep.class)
                .flattenLast(FixedStep::touches)
                .ifNotExists(PlacedTouch.class, Joiners.equal())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, score) -> Cause.of(touch.personId(), touch.when(),
                        "a touch of " + touch.stepId() + " is not in the timetable as it was recorded", touch.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R15, "touches"));
    }

    /** Its pans stand where they stood. */
    static Constraint r15Pans(ConstraintFactory factory) {
        return factory.forEach(FixedStep.class)
                .flattenLast(FixedStep::pans)
                .ifNotExists(PanPlace.class, Joiners.equal())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((pan, score) -> Cause.of(pan.cavityId(), new Span(0, 0),
                        "pan " + pan.pan() + " of " + pan.stepId() + " does not stand where it was recorded", pan.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R15, "pans"));
    }

    /** Its pieces stand where they stood. */
    static Constraint r15Placements(ConstraintFactory factory) {
        return factory.forEach(FixedStep.class)
                .flattenLast(FixedStep::placements)
                .ifNotExists(Placement.class, Joiners.equal())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((placement, score) -> Cause.of(
                        ShelfRules.shelfName(placement.storeId(), placement.shelfId()), placement.when(),
                        "piece " + placement.piece() + " of " + placement.stepId()
                                + " does not stand where it was recorded",
                        placement.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R15, "placements"));
    }
}
