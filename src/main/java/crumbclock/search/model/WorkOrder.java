package crumbclock.search.model;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/** The order of work: every unit once. What stands earlier takes its slot first. */
@PlanningEntity
public class WorkOrder {

    @PlanningListVariable
    private List<UnitRef> sequence = new ArrayList<>();

    public WorkOrder() {
    }

    public WorkOrder(List<UnitRef> sequence) {
        this.sequence = sequence;
    }

    public List<UnitRef> getSequence() {
        return sequence;
    }

    public void setSequence(List<UnitRef> sequence) {
        this.sequence = sequence;
    }
}
