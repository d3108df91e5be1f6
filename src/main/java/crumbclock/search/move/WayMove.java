package crumbclock.search.move;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import crumbclock.search.model.OrderWay;
import crumbclock.search.model.WorkPlan;

/** Places one order in another way. */
final class WayMove extends AbstractMove<WorkPlan> {

    private final int order;
    private final int way;

    WayMove(int order, int way) {
        this.order = order;
        this.way = way;
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<WorkPlan> director) {
        return director.getWorkingSolution().getWays().get(order).getWay() != way;
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<WorkPlan> director) {
        OrderWay choice = director.getWorkingSolution().getWays().get(order);
        director.beforeVariableChanged(choice, "way");
        choice.setWay(way);
        director.afterVariableChanged(choice, "way");
    }

    @Override
    public String toString() {
        return "place order " + order + " in way " + way;
    }
}
