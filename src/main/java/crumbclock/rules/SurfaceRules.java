package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sumLong;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.OnSurface;
import crumbclock.rules.fact.TimedStep;
import crumbclock.units.Span;

/** R06 equipment and surfaces, the surfaces: racks and benches, counted by area. */
final class SurfaceRules {

    private SurfaceRules() {
    }

    /** A step that can stand on racks and benches only has one; a step that stands nowhere has none. */
    static Constraint r06SurfaceGiven(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.placed().surfaceId().isEmpty() ? needsSurface(step)
                        : step.step().place().isEmpty())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of(step.placed().surfaceId(), step.span(),
                        step.placed().surfaceId().isEmpty() ? step.id() + " needs a rack or bench and has none"
                                : step.id() + " stands nowhere, yet takes " + step.placed().surfaceId(),
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R06, "surface given"));
    }

    /** The surface is one of the kitchen's. */
    static Constraint r06KnownSurface(ConstraintFactory factory) {
        return factory.forEach(OnSurface.class)
                .ifNotExists(Surface.class, Joiners.equal(OnSurface::surfaceId, Surface::id))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((item, score) -> Cause.of(item.surfaceId(), item.when(),
                        item.stepId() + " stands on \"" + item.surfaceId() + "\", which the kitchen has not",
                        item.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "known surface"));
    }

    /** At every moment all that stands on a surface finds room on it; looked at whenever something comes. */
    static Constraint r06SurfaceArea(ConstraintFactory factory) {
        return factory.forEach(OnSurface.class)
                .map(item -> new Moment(item.surfaceId(), item.start()))
                .distinct()
                .join(OnSurface.class, Joiners.equal(Moment::surfaceId, OnSurface::surfaceId),
                        Joiners.greaterThanOrEqual(Moment::minute, OnSurface::start),
                        Joiners.lessThan(Moment::minute, OnSurface::end))
                .groupBy((moment, item) -> moment, sumLong((moment, item) -> item.areaMm2()))
                .join(Surface.class, Joiners.equal((moment, area) -> moment.surfaceId(), Surface::id))
                .filter((moment, area, surface) -> area > surface.areaMm2())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((moment, area, surface, score) -> Cause.of(surface.id(),
                        new Span(moment.minute(), moment.minute() + 1),
                        "things on " + surface.name() + " take " + area + " mm²; it has " + surface.areaMm2()))
                .asConstraint(ConstraintNames.of(Rule.R06, "surface area"));
    }

    /** Nothing stands on a surface that is away. */
    static Constraint r06SurfaceAway(ConstraintFactory factory) {
        return factory.forEach(OnSurface.class)
                .join(Surface.class, Joiners.equal(OnSurface::surfaceId, Surface::id))
                .filter((item, surface) -> surface.away().stream().anyMatch(item.when()::overlaps))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((item, surface, score) -> Cause.of(surface.id(), item.when(),
                        item.stepId() + " stands on " + surface.name() + " while it is away", item.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R06, "surface away"));
    }

    private static boolean needsSurface(TimedStep step) {
        return step.step().place().isPresent()
                && (step.isHandsOn() || step.step().place().get().allowed().stream().noneMatch(PlaceKind::hasShelves));
    }

    private record Moment(String surfaceId, int minute) {
    }
}
