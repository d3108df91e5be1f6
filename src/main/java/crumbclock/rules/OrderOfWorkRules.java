package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.work.Wait;
import crumbclock.rules.fact.TimedStep;

/** R01 order of work and R02 not too long: waits between steps, and the rest of an unattended step. */
final class OrderOfWorkRules {

    private OrderOfWorkRules() {
    }

    /** A step starts no earlier than the end of the step before it plus the least wait. */
    static Constraint r01LeastWait(ConstraintFactory factory) {
        return factory.forEach(Wait.class)
                .join(TimedStep.class, Joiners.equal(Wait::fromStepId, TimedStep::id))
                .join(TimedStep.class, Joiners.equal((wait, from) -> wait.toStepId(), TimedStep::id))
                .filter((wait, from, to) -> waited(from, to) < wait.leastMinutes())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((wait, from, to, score) -> Cause.of("", Cause.between(from.end(), to.start()),
                        to.id() + " starts " + waited(from, to) + " min after the end of " + from.id()
                                + "; at least " + wait.leastMinutes() + " are needed",
                        from.id(), to.id()))
                .asConstraint(ConstraintNames.of(Rule.R01, "least wait"));
    }

    /** The rest of an unattended step is long enough. */
    static Constraint r01LeastRest(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> !step.isHandsOn() && step.restMinutes() < step.step().leastMinutes())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        step.id() + " rests " + step.restMinutes() + " min; at least "
                                + step.step().leastMinutes() + " are needed",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R01, "least rest"));
    }

    /** A step starts no later than the end of the step before it plus the most wait, where there is one. */
    static Constraint r02MostWait(ConstraintFactory factory) {
        return factory.forEach(Wait.class)
                .filter(Wait::hasMost)
                .join(TimedStep.class, Joiners.equal(Wait::fromStepId, TimedStep::id))
                .join(TimedStep.class, Joiners.equal((wait, from) -> wait.toStepId(), TimedStep::id))
                .filter((wait, from, to) -> waited(from, to) > wait.mostMinutes())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((wait, from, to, score) -> Cause.of("", Cause.between(from.end(), to.start()),
                        to.id() + " starts " + waited(from, to) + " min after the end of " + from.id()
                                + "; at most " + wait.mostMinutes() + " are allowed",
                        from.id(), to.id()))
                .asConstraint(ConstraintNames.of(Rule.R02, "most wait"));
    }

    /** The rest of an unattended step is not too long. */
    static Constraint r02MostRest(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> !step.isHandsOn() && step.step().mostMinutes() != Wait.NO_MOST
                        && step.restMinutes() > step.step().mostMinutes())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        step.id() + " rests " + step.restMinutes() + " min; at most "
                                + step.step().mostMinutes() + " are allowed",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R02, "most rest"));
    }

    private static long waited(TimedStep from, TimedStep to) {
        return (long) to.start() - from.end();
    }
}
