package crumbclock.rules;

import ai.timefold.solver.core.api.score.analysis.ConstraintAnalysis;
import ai.timefold.solver.core.api.score.analysis.MatchAnalysis;
import ai.timefold.solver.core.api.score.analysis.ScoreAnalysis;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.ScoreAnalysisFetchPolicy;
import ai.timefold.solver.core.api.solver.SolutionManager;
import ai.timefold.solver.core.api.solver.SolutionUpdatePolicy;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.fact.AuditedPlan;
import crumbclock.rules.fact.TimedStep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** Recomputes every rule and wish of a finished timetable. */
public final class Audit {

    private static final List<Wish> WISHES =
            List.of(Wish.W01, Wish.W02, Wish.W03, Wish.W04, Wish.W05, Wish.W06, Wish.W07);

    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::rule).thenComparing(Finding::when)
            .thenComparing(Finding::place).thenComparing(finding -> String.join(" ", finding.items()))
            .thenComparing(Finding::message);

    private Audit() {
    }

    /**
     * Recomputes every rule and wish from problem and timetable. A wrong timetable yields findings and never an
     * exception. Equal input gives equal output. Safe to call from several threads.
     *
     * @param problem   read and checked; its own references are taken as good
     * @param timetable anything: references into nowhere are findings, too
     */
    public static AuditResult audit(Problem problem, Timetable timetable) {
        ScoreAnalysis<HardMediumSoftLongScore> analysis = Manager.INSTANCE.analyze(
                AuditedPlan.of(problem, timetable), ScoreAnalysisFetchPolicy.FETCH_ALL,
                SolutionUpdatePolicy.UPDATE_SCORE_ONLY);
        List<CostLine> cost = new ArrayList<>();
        cost.add(costLine(ConstraintNames.LATENESS, "minutes late and orders not made", true, analysis));
        WISHES.forEach(wish -> cost.add(costLine(wish.name(), wish.title(), false, analysis)));
        if (!problem.kept().isNone()) {
            cost.add(costLine(Wish.W08.name(), Wish.W08.title(), false, analysis));
        }
        return new AuditResult(findings(analysis), cost, -analysis.score().mediumScore(), -analysis.score().softScore());
    }

    /** Builds what every audit needs; the first audit does it otherwise. */
    public static void prepare() {
        Objects.requireNonNull(Manager.INSTANCE);
    }

    private static List<Finding> findings(ScoreAnalysis<HardMediumSoftLongScore> analysis) {
        List<Finding> findings = new ArrayList<>();
        for (ConstraintAnalysis<HardMediumSoftLongScore> constraint : analysis.constraintAnalyses()) {
            if (ConstraintNames.isRule(constraint.constraintName())) {
                constraint.matches().forEach(match -> findings.add(finding(constraint.constraintName(), match)));
            }
        }
        return findings.stream().sorted(ORDER).distinct().toList();
    }

    private static Finding finding(String constraintName, MatchAnalysis<HardMediumSoftLongScore> match) {
        Cause cause = (Cause) match.justification();
        return new Finding(ConstraintNames.ruleOf(constraintName), cause.items(), cause.place(), cause.when(),
                cause.message());
    }

    private static CostLine costLine(String name, String title, boolean medium,
            ScoreAnalysis<HardMediumSoftLongScore> analysis) {
        long points = 0;
        int matches = 0;
        for (ConstraintAnalysis<HardMediumSoftLongScore> constraint : analysis.constraintAnalyses()) {
            if (!ConstraintNames.isRule(constraint.constraintName())
                    && ConstraintNames.lineOf(constraint.constraintName()).equals(name)) {
                points -= constraint.score().mediumScore() + constraint.score().softScore();
                matches += (int) constraint.matches().stream().filter(match -> !match.score().isZero()).count();
            }
        }
        return new CostLine(name, title, medium, points, matches);
    }

    /** Built when first needed: it takes longer than an audit and can be shared. */
    private static final class Manager {

        private static final SolutionManager<AuditedPlan, HardMediumSoftLongScore> INSTANCE =
                SolutionManager.create(SolverFactory.create(new SolverConfig()
                        .withSolutionClass(AuditedPlan.class)
                        .withEntityClasses(TimedStep.class)
                        .withConstraintProviderClass(KitchenConstraints.class)));
    }
}
