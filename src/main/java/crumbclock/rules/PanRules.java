package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.PanNeed;
import crumbclock.rules.fact.RackSpot;
import crumbclock.rules.fact.StandingPan;

/** R07 oven room, the pans: each on one rack, inside it, apart from the others. */
final class PanRules {

    private PanRules() {
    }

    /** Every pan of a placed bake stands somewhere. */
    static Constraint r07PanMissing(ConstraintFactory factory) {
        return factory.forEach(PanNeed.class)
                .ifNotExists(StandingPan.class, Joiners.equal(PanNeed::stepId, StandingPan::stepId),
                        Joiners.equal(PanNeed::pan, pan -> pan.place().pan()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((need, score) -> Cause.of(need.cavityId(), need.when(),
                        "pan " + need.pan() + " of " + need.stepId() + " has no place in the oven", need.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "pan missing"));
    }

    /** No pan stands in two places. */
    static Constraint r07PanTwice(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .join(StandingPan.class, Joiners.equal(StandingPan::stepId), Joiners.equal(pan -> pan.place().pan()),
                        Joiners.lessThan(StandingPan::no))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(other.cavityId(), other.when(),
                        "pan " + one.place().pan() + " of " + one.stepId() + " stands in two places", one.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "pan twice"));
    }

    /** Pans of steps that are not placed, or that have no such pan. */
    static Constraint r07Stray(ConstraintFactory factory) {
        return Strays.of(factory, Rule.R07);
    }

    /** All pans of a bake share its cavity. */
    static Constraint r07OneCavity(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .filter(pan -> !pan.cavityId().equals(pan.bakeCavityId()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((pan, score) -> Cause.of(pan.cavityId(), pan.when(),
                        describe(pan) + " is in " + pan.cavityId() + "; the bake is in " + pan.bakeCavityId(),
                        pan.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "one cavity"));
    }

    /** A pan stands on a rack that the cavity has. */
    static Constraint r07KnownRack(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .ifNotExists(RackSpot.class, Joiners.equal(StandingPan::cavityId, RackSpot::cavityId),
                        Joiners.equal(pan -> pan.place().rack(), RackSpot::index))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((pan, score) -> Cause.of(rackName(pan), pan.when(),
                        describe(pan) + " stands on a rack that there is not", pan.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "known rack"));
    }

    /** A pan is no taller than the room above its rack. */
    static Constraint r07Height(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .join(RackSpot.class, Joiners.equal(StandingPan::cavityId, RackSpot::cavityId),
                        Joiners.equal(pan -> pan.place().rack(), RackSpot::index))
                .filter((pan, spot) -> pan.pan().heightMm() > spot.rack().clearHeightMm())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((pan, spot, score) -> Cause.of(rackName(pan), pan.when(),
                        describe(pan) + " is " + pan.pan().heightMm() + " mm tall; the rack has room for "
                                + spot.rack().clearHeightMm(),
                        pan.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "height"));
    }

    /** A pan stands wholly on its rack, with air to the walls. */
    static Constraint r07Inside(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .join(RackSpot.class, Joiners.equal(StandingPan::cavityId, RackSpot::cavityId),
                        Joiners.equal(pan -> pan.place().rack(), RackSpot::index))
                .filter((pan, spot) -> !pan.shape().fitsOn(spot.rack().widthMm(), spot.rack().depthMm(),
                        spot.cavity().wallGapMm()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((pan, spot, score) -> Cause.of(rackName(pan), pan.when(),
                        describe(pan) + " does not stand wholly on the rack of " + spot.rack().widthMm() + " × "
                                + spot.rack().depthMm() + " mm with " + spot.cavity().wallGapMm() + " mm to the walls",
                        pan.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "inside"));
    }

    /** Pans that are on one rack at the same time keep their gap. */
    static Constraint r07Apart(ConstraintFactory factory) {
        return factory.forEach(StandingPan.class)
                .join(StandingPan.class, Joiners.equal(StandingPan::cavityId),
                        Joiners.equal(pan -> pan.place().rack()),
                        Joiners.overlapping(StandingPan::start, StandingPan::end),
                        Joiners.filtering((one, other) -> one.no() < other.no() && !isSamePan(one, other)
                                && one.when().overlaps(other.when())))
                .join(Cavity.class, Joiners.equal((one, other) -> one.cavityId(), Cavity::id))
                .filter((one, other, cavity) -> !one.shape().isApartFrom(other.shape(), cavity.panGapMm()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, cavity, score) -> Cause.of(rackName(one),
                        Cause.shared(one.when(), other.when()),
                        describe(one) + " and " + describe(other) + " are less than " + cavity.panGapMm()
                                + " mm apart or overlap",
                        one.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R07, "apart"));
    }

    /** A pan given twice is told once, by {@link #r07PanTwice}. */
    private static boolean isSamePan(StandingPan one, StandingPan other) {
        return one.stepId().equals(other.stepId()) && one.place().pan() == other.place().pan();
    }

    private static String describe(StandingPan pan) {
        return "pan " + pan.place().pan() + " of " + pan.stepId();
    }

    private static String rackName(StandingPan pan) {
        return pan.cavityId() + ", rack " + (pan.place().rack() + 1);
    }
}
