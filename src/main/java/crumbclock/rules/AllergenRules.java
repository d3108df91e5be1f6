package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.work.Step;
import crumbclock.rules.fact.Bake;
import crumbclock.rules.fact.HeldUnit;
import crumbclock.rules.fact.OnSurface;
import crumbclock.rules.fact.ShelfSpot;
import crumbclock.rules.fact.Standing;
import java.util.Set;
import java.util.TreeSet;

/** R13 allergens: what must be free from one meets nothing that holds it. */
final class AllergenRules {

    private AllergenRules() {
    }

    /** Equipment that held an allergen is fully cleaned before a use that must be free from it. */
    static Constraint r13Equipment(ConstraintFactory factory) {
        return factory.forEach(HeldUnit.class)
                .filter(held -> !held.step().contains().isEmpty())
                .join(factory.forEach(HeldUnit.class).filter(held -> !held.step().freeFrom().isEmpty()),
                        Joiners.equal(HeldUnit::poolId), Joiners.equal(HeldUnit::unit),
                        Joiners.lessThanOrEqual(HeldUnit::until, HeldUnit::from),
                        Joiners.filtering((before, after) -> before.no() != after.no()
                                && !met(after.step(), before.step()).isEmpty()))
                .join(Pool.class, Joiners.equal((before, after) -> after.poolId(), Pool::id))
                .ifNotExists(Cleaning.class, Joiners.equal((before, after, pool) -> pool.id(), Cleaning::poolId),
                        Joiners.equal((before, after, pool) -> after.unit(), Cleaning::unit),
                        Joiners.filtering((before, after, pool, cleaning) -> cleaning.when().start() >= before.until()
                                && cleaning.when().end() <= after.from()
                                && cleaning.when().minutes() >= cleanMinutes(pool, before, after)))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((before, after, pool, score) -> Cause.of(pool.id(),
                        Cause.between(before.until(), after.from()),
                        "piece " + after.unit() + " of " + pool.name() + " held " + met(after.step(), before.step())
                                + " for " + before.stepId() + " and then serves " + after.stepId()
                                + " without a full clean of " + cleanMinutes(pool, before, after) + " min between",
                        before.stepId(), after.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "equipment"));
    }

    /** Bakes in one cavity at the same time do not meet. */
    static Constraint r13Oven(ConstraintFactory factory) {
        return factory.forEach(Bake.class)
                .filter(bake -> !bake.step().freeFrom().isEmpty())
                .join(Bake.class, Joiners.equal(Bake::cavityId), Joiners.overlapping(Bake::start, Bake::end))
                .filter((free, other) -> free.no() != other.no() && free.span().overlaps(other.span())
                        && !met(free.step(), other.step()).isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((free, other, score) -> Cause.of(free.cavityId(), Cause.shared(free.span(), other.span()),
                        describe(free.step(), other.step(), "shares the oven with"), free.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "oven"));
    }

    /** Open things on one rack or bench at the same time do not meet. */
    static Constraint r13Surface(ConstraintFactory factory) {
        return factory.forEach(OnSurface.class)
                .filter(item -> item.need().form().open() && !item.step().freeFrom().isEmpty())
                .join(OnSurface.class, Joiners.equal(OnSurface::surfaceId),
                        Joiners.overlapping(OnSurface::start, OnSurface::end))
                .filter((free, other) -> free.no() != other.no() && other.need().form().open()
                        && free.when().overlaps(other.when()) && !met(free.step(), other.step()).isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((free, other, score) -> Cause.of(free.surfaceId(), Cause.shared(free.when(), other.when()),
                        describe(free.step(), other.step(), "stands open beside"), free.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "surface"));
    }

    /** Open things on one shelf at the same time do not meet. */
    static Constraint r13Shelf(ConstraintFactory factory) {
        return openPieces(factory)
                .filter(standing -> !standing.step().freeFrom().isEmpty())
                .join(openPieces(factory), Joiners.equal(Standing::storeId), Joiners.equal(Standing::shelfId),
                        Joiners.overlapping(Standing::start, Standing::end))
                .filter((free, other) -> free.when().overlaps(other.when())
                        && !met(free.step(), other.step()).isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((free, other, score) -> Cause.of(shelfName(free), Cause.shared(free.when(), other.when()),
                        describe(free.step(), other.step(), "stands open beside"), free.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "shelf"));
    }

    /** Crumbs fall: an open thing stands under no open thing that holds what it must be free from. */
    static Constraint r13Below(ConstraintFactory factory) {
        return openPieces(factory)
                .filter(standing -> !standing.step().freeFrom().isEmpty())
                .join(openPieces(factory), Joiners.equal(Standing::storeId),
                        Joiners.overlapping(Standing::start, Standing::end),
                        Joiners.filtering((free, other) -> free.when().overlaps(other.when())
                                && !met(free.step(), other.step()).isEmpty()))
                .join(ShelfSpot.class, Joiners.equal((free, other) -> free.storeId(), ShelfSpot::storeId),
                        Joiners.equal((free, other) -> free.shelfId(), ShelfSpot::shelfId))
                .join(ShelfSpot.class, Joiners.equal((free, other, below) -> other.storeId(), ShelfSpot::storeId),
                        Joiners.equal((free, other, below) -> other.shelfId(), ShelfSpot::shelfId),
                        Joiners.greaterThan((free, other, below) -> below.index(), ShelfSpot::index))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((free, other, below, above, score) -> Cause.of(shelfName(free),
                        Cause.shared(free.when(), other.when()),
                        describe(free.step(), other.step(), "stands open under"), free.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "below"));
    }

    /** A shelf set aside as free from an allergen bears nothing that contains it, covered or not. */
    static Constraint r13FreeShelf(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(ShelfSpot.class, Joiners.equal(Standing::storeId, ShelfSpot::storeId),
                        Joiners.equal(Standing::shelfId, ShelfSpot::shelfId))
                .filter((standing, spot) -> !common(spot.shelf().freeFrom(), standing.step().contains()).isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, spot, score) -> Cause.of(shelfName(standing), standing.when(),
                        standing.stepId() + " contains " + common(spot.shelf().freeFrom(), standing.step().contains())
                                + "; the shelf is kept free from it",
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R13, "free shelf"));
    }

    private static UniConstraintStream<Standing> openPieces(ConstraintFactory factory) {
        return factory.forEach(Standing.class).filter(standing -> standing.form().open());
    }

    private static int cleanMinutes(Pool pool, HeldUnit before, HeldUnit after) {
        return met(after.step(), before.step()).stream().mapToInt(pool::deepCleanMinutes).max().orElse(0);
    }

    private static Set<String> met(Step free, Step other) {
        return common(free.freeFrom(), other.contains());
    }

    private static Set<String> common(Set<String> freeFrom, Set<String> contains) {
        if (freeFrom.isEmpty() || contains.isEmpty()) {
            return Set.of();
        }
        var common = new TreeSet<>(freeFrom);
        common.retainAll(contains);
        return common;
    }

    private static String describe(Step free, Step other, String how) {
        return free.id() + ", which must be free from " + met(free, other) + ", " + how + " " + other.id();
    }

    private static String shelfName(Standing standing) {
        return ShelfRules.shelfName(standing.storeId(), standing.shelfId());
    }
}
