package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.LifeLimit;
import crumbclock.rules.fact.TimedStep;
import crumbclock.rules.fact.Whereabouts;
import crumbclock.units.Span;
import java.util.List;

/** R12 life: minutes out of the cold, and how long things keep in the places where they were. */
final class LifeRules {

    private LifeRules() {
    }

    /** What needs cold is not out of it for longer than allowed, all outings added up. */
    static Constraint r12OutOfCold(ConstraintFactory factory) {
        return factory.forEach(ColdLimit.class)
                .join(TimedStep.class, Joiners.equal(ColdLimit::fromStepId, TimedStep::id))
                .join(TimedStep.class, Joiners.equal((limit, from) -> limit.toStepId(), TimedStep::id))
                .join(Whereabouts.class)
                .filter((limit, from, to, where) -> minutesOut(limit, window(from, to), where) > limit.mostMinutesOut())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((limit, from, to, where, score) -> Cause.of("", window(from, to),
                        limit.name() + " is out of the cold for " + minutesOut(limit, window(from, to), where)
                                + " min; " + limit.mostMinutesOut() + " are allowed",
                        limit.ownerId(), from.id(), to.id()))
                .asConstraint(ConstraintNames.of(Rule.R12, "out of the cold"));
    }

    /** A thing is used before its life in the places that held it runs out. */
    static Constraint r12Life(ConstraintFactory factory) {
        return factory.forEach(LifeLimit.class)
                .join(TimedStep.class, Joiners.equal(LifeLimit::fromStepId, TimedStep::id))
                .join(TimedStep.class, Joiners.equal((limit, from) -> limit.toStepId(), TimedStep::id))
                .join(Whereabouts.class)
                .filter((limit, from, to, where) -> burnt(limit, window(from, to), where) > LifeLimit.LIFE)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((limit, from, to, where, score) -> Cause.of("", window(from, to),
                        limit.name() + " is kept for " + window(from, to).minutes() + " min, which is "
                                + burnt(limit, window(from, to), where) / (LifeLimit.LIFE / 1000)
                                + " thousandths of its life",
                        limit.ownerId(), from.id(), to.id()))
                .asConstraint(ConstraintNames.of(Rule.R12, "life"));
    }

    private static Span window(TimedStep from, TimedStep to) {
        return new Span(from.end(), Math.max(from.end(), to.start()));
    }

    private static long minutesOut(ColdLimit limit, Span window, Whereabouts where) {
        long cold = stays(limit.heldStepIds(), where).stream().filter(stay -> stay.kind().keepsCold())
                .mapToLong(stay -> stay.when().overlapMinutes(window)).sum();
        return Math.max(0, window.minutes() - cold);
    }

    private static long burnt(LifeLimit limit, Span window, Whereabouts where) {
        long outside = window.minutes();
        long shares = 0;
        for (Whereabouts.Stay stay : stays(limit.heldStepIds(), where)) {
            int minutes = stay.when().overlapMinutes(window);
            outside -= minutes;
            shares = added(shares, minutes, limit.lifeMinutesIn(stay.kind()));
        }
        return added(shares, Math.max(0, outside), limit.lifeMinutesIn(PlaceKind.AMBIENT));
    }

    /** Stops adding once life is over, so that no timetable, however long, runs out of numbers. */
    private static long added(long shares, long minutes, int lifeMinutes) {
        return shares > LifeLimit.LIFE ? shares
                : shares + Math.min(minutes, 2L * lifeMinutes) * (LifeLimit.LIFE / lifeMinutes);
    }

    private static List<Whereabouts.Stay> stays(List<String> stepIds, Whereabouts where) {
        return stepIds.stream().flatMap(id -> where.findStay(id).stream()).toList();
    }
}
