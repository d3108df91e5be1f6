package crumbclock.rules;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.test.api.score.stream.ConstraintVerifier;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.rules.fact.AuditedPlan;
import crumbclock.rules.fact.TimedStep;
import java.util.function.Function;

/** One constraint, alone, on a small problem and timetable. */
final class RuleCheck {

    private static final ConstraintVerifier<KitchenConstraints, AuditedPlan> VERIFIER =
            ConstraintVerifier.build(new KitchenConstraints(), AuditedPlan.class, TimedStep.class);

    private final Function<ConstraintFactory, Constraint> constraint;
    private final Problem problem;
    private final Timetable timetable;

    private RuleCheck(Function<ConstraintFactory, Constraint> constraint, Problem problem, Timetable timetable) {
        this.constraint = constraint;
        this.problem = problem;
        this.timetable = timetable;
    }

    static Constrained check(Function<ConstraintFactory, Constraint> constraint) {
        return (problem, timetable) -> new RuleCheck(constraint, problem.build(), timetable.build());
    }

    /** The exact penalty: the number of findings for a rule, the points for a wish. */
    RuleCheck costs(long penalty) {
        VERIFIER.verifyThat((provider, factory) -> constraint.apply(factory))
                .givenSolution(AuditedPlan.of(problem, timetable))
                .penalizesBy(penalty);
        return this;
    }

    /** The exact reason of one match. */
    RuleCheck because(Cause cause) {
        VERIFIER.verifyThat((provider, factory) -> constraint.apply(factory))
                .givenSolution(AuditedPlan.of(problem, timetable))
                .justifiesWith(cause);
        return this;
    }

    /** A finding of the whole audit has these words. */
    RuleCheck saying(String words) {
        assertThat(Audit.audit(problem, timetable).findings()).anySatisfy(
                finding -> assertThat(finding.message()).contains(words));
        return this;
    }

    /** A constraint that waits for something to look at. */
    interface Constrained {
        RuleCheck on(ProblemBuilder problem, TimetableBuilder timetable);
    }
}
