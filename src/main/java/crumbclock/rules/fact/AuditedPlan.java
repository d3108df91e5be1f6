package crumbclock.rules.fact;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.valuerange.CountableValueRange;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeFactory;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import java.util.List;

/** A problem and its finished timetable as facts that the rules run over. */
@PlanningSolution
public class AuditedPlan {

    @PlanningEntityCollectionProperty
    private List<TimedStep> steps;
    @ProblemFactCollectionProperty
    private List<Object> facts;
    @PlanningScore
    private HardMediumSoftLongScore score;

    /** For Timefold's cloning only. */
    AuditedPlan() {
    }

    private AuditedPlan(List<TimedStep> steps, List<Object> facts) {
        this.steps = steps;
        this.facts = facts;
    }

    public static AuditedPlan of(Problem problem, Timetable timetable) {
        var reader = new PlanReader(problem, timetable);
        return new AuditedPlan(reader.timedSteps(), reader.facts());
    }

    /** Every minute that a start may have: Timefold refuses others, so {@link PlanReader} lets none through. */
    @ValueRangeProvider
    public CountableValueRange<Integer> starts() {
        return ValueRangeFactory.createIntValueRange(-FarMinutes.FAR, FarMinutes.FAR + 1);
    }

    public HardMediumSoftLongScore score() {
        return score;
    }
}
