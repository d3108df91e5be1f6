package crumbclock.search.model;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import java.util.ArrayList;
import java.util.List;

/** Timefold's planning solution: the order of work, its score, and the desk at which it is decoded. */
@PlanningSolution
public class WorkPlan {

    @ProblemFactProperty
    private DecodeDesk desk;
    @ValueRangeProvider
    @ProblemFactCollectionProperty
    private List<UnitRef> units = new ArrayList<>();
    @PlanningEntityProperty
    private WorkOrder order;
    @PlanningScore
    private HardMediumSoftLongScore score;

    public WorkPlan() {
    }

    public WorkPlan(DecodeDesk desk, List<UnitRef> sequence) {
        this.desk = desk;
        this.units = List.copyOf(sequence);
        this.order = new WorkOrder(new ArrayList<>(sequence));
    }

    public DecodeDesk getDesk() {
        return desk;
    }

    public WorkOrder getOrder() {
        return order;
    }

    public List<UnitRef> getUnits() {
        return units;
    }

    public HardMediumSoftLongScore getScore() {
        return score;
    }

    public void setScore(HardMediumSoftLongScore score) {
        this.score = score;
    }
}
