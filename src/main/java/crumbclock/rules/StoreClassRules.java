package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.OnSurface;
import crumbclock.rules.fact.Standing;

/** R11 store class: what may stand where. */
final class StoreClassRules {

    private StoreClassRules() {
    }

    /** A store is of a kind that the method allows. */
    static Constraint r11StoreKind(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(Store.class, Joiners.equal(Standing::storeId, Store::id))
                .filter((standing, store) -> !standing.step().place().orElseThrow().allowed().contains(store.kind()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, store, score) -> Cause.of(shelfName(standing), standing.when(),
                        standing.stepId() + " stands in " + store.name() + " (" + store.kind() + "); allowed are "
                                + standing.step().place().orElseThrow().allowed(),
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R11, "store kind"));
    }

    /** A surface is of a kind that the method allows. */
    static Constraint r11SurfaceKind(ConstraintFactory factory) {
        return factory.forEach(OnSurface.class)
                .join(Surface.class, Joiners.equal(OnSurface::surfaceId, Surface::id))
                .filter((item, surface) -> !item.need().allowed().contains(surface.kind()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((item, surface, score) -> Cause.of(surface.id(), item.when(),
                        item.stepId() + " stands on " + surface.name() + " (" + surface.kind() + "); allowed are "
                                + item.need().allowed(),
                        item.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R11, "surface kind"));
    }

    /** Nothing warmer than allowed goes into a store. */
    static Constraint r11Warmth(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .join(Store.class, Joiners.equal(Standing::storeId, Store::id))
                .filter((standing, store) -> standing.form().warmthC() > store.warmestInC())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, store, score) -> Cause.of(shelfName(standing), standing.when(),
                        standing.stepId() + " goes in at " + standing.form().warmthC() + " °C; " + store.name()
                                + " takes nothing above " + store.warmestInC(),
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R11, "warmth"));
    }

    /** Sugar-paste finishes keep out of humid stores. */
    static Constraint r11Humid(ConstraintFactory factory) {
        return factory.forEach(Standing.class)
                .filter(standing -> standing.form().pasteFinish())
                .join(Store.class, Joiners.equal(Standing::storeId, Store::id))
                .filter((standing, store) -> store.humid())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((standing, store, score) -> Cause.of(shelfName(standing), standing.when(),
                        standing.stepId() + " has a sugar-paste finish and stands in " + store.name()
                                + ", which is humid",
                        standing.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R11, "humid"));
    }

    private static String shelfName(Standing standing) {
        return ShelfRules.shelfName(standing.storeId(), standing.shelfId());
    }
}
