package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.Stray;

/** What belongs to nothing in the problem, reported under the rule concerned. */
final class Strays {

    private Strays() {
    }

    static Constraint of(ConstraintFactory factory, Rule rule) {
        return factory.forEach(Stray.class)
                .filter(stray -> stray.rule() == rule)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((stray, score) -> Cause.of(stray.place(), stray.when(),
                        stray.stepId() + ": " + stray.message(), stray.stepId()))
                .asConstraint(ConstraintNames.of(rule, "stray"));
    }
}
