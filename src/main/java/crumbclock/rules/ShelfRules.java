package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.max;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sumLong;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.OnShelf;
import crumbclock.rules.fact.PlaceDue;
import crumbclock.rules.fact.ShelfSpot;
import crumbclock.rules.fact.Standing;
import crumbclock.units.Span;
import java.util.List;

/** R10 shelf fit: each piece on one shelf, wholly on it, under its height, apart from the others, within its mass. */
final class ShelfRules {

    private ShelfRules() {
    }

    /** Every piece of a placed step that stands in a store has its place. */
    static Constraint r10Missing(ConstraintFactory factory) {
        return factory.forEach(PlaceDue.class)
                .ifNotExists(Standing.class, Joiners.equal(PlaceDue::stepId, Standing::stepId),
                        Joiners.equal(PlaceDue::piece, Standing::piece))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((due, score) -> Cause.of("", due.when(),
                        "piece " + due.piece() + " of " + due.stepId() + " has no place on a shelf", due.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "missing"));
    }

    /** No piece stands in two places. */
    static Constraint r10Twice(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(Standing.class, Joiners.equal(Standing::stepId), Joiners.equal(Standing::piece),
                        Joiners.lessThan(Standing::no))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(shelfName(other.storeId(), other.shelfId()), other.when(),
                        "piece " + one.piece() + " of " + one.stepId() + " stands in two places", one.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "twice"));
    }

    /** Placements of steps that are not placed, stand elsewhere, or have no such piece. */
    static Constraint r10Stray(ConstraintFactory factory) {
        return Strays.of(factory, Rule.R10);
    }

    /** A piece keeps its place for the whole of its step. */
    static Constraint r10Stays(ConstraintFactory factory) {
        return factory.forEach(PlaceDue.class)
                .join(Standing.class, Joiners.equal(PlaceDue::stepId, Standing::stepId),
                        Joiners.equal(PlaceDue::piece, Standing::piece))
                .filter((due, standing) -> !standing.when().equals(due.when()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((due, standing, score) -> Cause.of(shelfName(standing.storeId(), standing.shelfId()),
                        standing.when(),
                        describe(standing) + " stands there from minute " + standing.start() + " to " + standing.end()
                                + "; its step goes from " + due.when().start() + " to " + due.when().end(),
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "stays"));
    }

    /** A piece stands on a shelf that the kitchen has. */
    static Constraint r10KnownShelf(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .ifNotExists(ShelfSpot.class, Joiners.equal(Standing::storeId, ShelfSpot::storeId),
                        Joiners.equal(Standing::shelfId, ShelfSpot::shelfId))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, score) -> Cause.of(shelfName(standing.storeId(), standing.shelfId()),
                        standing.when(), describe(standing) + " stands on a shelf that there is not", standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "known shelf"));
    }

    /** A piece stands wholly on its shelf, with air to the edge. */
    static Constraint r10Inside(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(ShelfSpot.class, Joiners.equal(Standing::storeId, ShelfSpot::storeId),
                        Joiners.equal(Standing::shelfId, ShelfSpot::shelfId))
                .filter((standing, spot) -> !standing.shape().fitsOn(spot.shelf().widthMm(), spot.shelf().depthMm(),
                        spot.store().wallGapMm()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, spot, score) -> Cause.of(shelfName(spot.storeId(), spot.shelfId()),
                        standing.when(),
                        describe(standing) + " does not stand wholly on the shelf of " + spot.shelf().widthMm() + " × "
                                + spot.shelf().depthMm() + " mm with " + spot.store().wallGapMm() + " mm to its edge",
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "inside"));
    }

    /** A piece is no taller than the shelf's clear height. */
    static Constraint r10Height(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(ShelfSpot.class, Joiners.equal(Standing::storeId, ShelfSpot::storeId),
                        Joiners.equal(Standing::shelfId, ShelfSpot::shelfId))
                .filter((standing, spot) -> standing.form().heightMm() > spot.shelf().clearHeightMm())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, spot, score) -> Cause.of(shelfName(spot.storeId(), spot.shelfId()),
                        standing.when(),
                        describe(standing) + " is " + standing.form().heightMm() + " mm tall; the shelf has room for "
                                + spot.shelf().clearHeightMm(),
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "height"));
    }

    /** Things on one shelf at the same time keep the store's gap; goods among themselves are nobody's fault. */
    static Constraint r10Apart(ConstraintFactory factory) {
        return factory.forEach(OnShelf.class)
                .filter(item -> !item.isGoods())
                .join(OnShelf.class, Joiners.equal(OnShelf::storeId), Joiners.equal(OnShelf::shelfId),
                        Joiners.overlapping(OnShelf::start, OnShelf::end),
                        Joiners.filtering((one, other) -> other.no() < one.no() && one.when().overlaps(other.when())
                                && !one.isSamePieceAs(other)))
                .join(Store.class, Joiners.equal((one, other) -> one.storeId(), Store::id))
                .filter((one, other, store) -> !one.shape().isApartFrom(other.shape(), store.gapMm()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, store, score) -> new Cause(
                        other.isGoods() ? List.of(one.stepId()) : List.of(other.stepId(), one.stepId()),
                        shelfName(one.storeId(), one.shelfId()), Cause.shared(one.when(), other.when()),
                        other.name() + " and " + one.name() + " are less than " + store.gapMm() + " mm apart or overlap"))
                .asConstraint(ConstraintNames.of(Rule.R10, "apart"));
    }

    /** A shelf bears all that stands on it, goods included; looked at whenever something comes. */
    static Constraint r10Mass(ConstraintFactory factory) {
        return factory.forEach(OnShelf.class)
                .map(item -> new Moment(item.storeId(), item.shelfId(), item.start()))
                .distinct()
                .join(OnShelf.class, Joiners.equal(Moment::storeId, OnShelf::storeId),
                        Joiners.equal(Moment::shelfId, OnShelf::shelfId),
                        Joiners.greaterThanOrEqual(Moment::minute, OnShelf::start),
                        Joiners.lessThan(Moment::minute, OnShelf::end))
                .groupBy((moment, item) -> moment, sumLong((moment, item) -> item.massGrams()),
                        max((Moment moment, OnShelf item) -> !item.isGoods()))
                .filter((moment, grams, anyOfThePlan) -> anyOfThePlan)
                .join(ShelfSpot.class, Joiners.equal((moment, grams, any) -> moment.storeId(), ShelfSpot::storeId),
                        Joiners.equal((moment, grams, any) -> moment.shelfId(), ShelfSpot::shelfId))
                .filter((moment, grams, any, spot) -> grams > spot.shelf().mostMassGrams())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((moment, grams, any, spot, score) -> Cause.of(
                        shelfName(spot.storeId(), spot.shelfId()), new Span(moment.minute(), moment.minute() + 1),
                        grams + " g stand on the shelf; it bears " + spot.shelf().mostMassGrams()))
                .asConstraint(ConstraintNames.of(Rule.R10, "mass"));
    }

    /** Nothing stands in a store that is away. */
    static Constraint r10StoreAway(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(Store.class, Joiners.equal(Standing::storeId, Store::id))
                .filter((standing, store) -> store.away().stream().anyMatch(standing.when()::overlaps))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, store, score) -> Cause.of(shelfName(store.id(), standing.shelfId()),
                        standing.when(), describe(standing) + " stands in " + store.name() + " while it is away",
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R10, "store away"));
    }

    static String shelfName(String storeId, String shelfId) {
        return storeId + ", " + shelfId;
    }

    private static String describe(Standing standing) {
        return standing.form().pieces() == 1 ? standing.stepId()
                : "piece " + standing.piece() + " of " + standing.stepId();
    }

    private record Moment(String storeId, String shelfId, int minute) {
    }
}
