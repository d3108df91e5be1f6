package crumbclock.search.move;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkOrder;
import crumbclock.search.model.WorkPlan;
import java.util.List;

/** Puts the elements of one stretch of the order of work into another order. Timefold takes it back by itself. */
final class ReorderMove extends AbstractMove<WorkPlan> {

    private final int from;
    private final List<UnitRef> stretch;

    /** @param stretch the same elements that stand at {@code from} and after, in their new order */
    ReorderMove(int from, List<UnitRef> stretch) {
        this.from = from;
        this.stretch = stretch;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<WorkPlan> director) {
        List<UnitRef> sequence = director.getWorkingSolution().getOrder().getSequence();
        return !sequence.subList(from, from + stretch.size()).equals(stretch);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<WorkPlan> director) {
        WorkOrder order = director.getWorkingSolution().getOrder();
        int until = from + stretch.size();
        director.beforeListVariableChanged(order, "sequence", from, until);
        for (int index = 0; index < stretch.size(); index++) {
            order.getSequence().set(from + index, stretch.get(index));
        }
        director.afterListVariableChanged(order, "sequence", from, until);
    }

    @Override
    public String toString() {
        return "reorder " + from + " " + stretch;
    }
}
