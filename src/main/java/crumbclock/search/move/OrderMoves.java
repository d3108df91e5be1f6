package crumbclock.search.move;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import crumbclock.search.model.WorkPlan;
import java.util.Iterator;
import java.util.Random;

/** Hands Timefold its moves. */
public class OrderMoves implements MoveIteratorFactory<WorkPlan, AbstractMove<WorkPlan>> {

    @Override
    public long getSize(ScoreDirector<WorkPlan> director) {
        long units = director.getWorkingSolution().getUnits().size();
        return units * units;
    }

    @Override
    public Iterator<AbstractMove<WorkPlan>> createOriginalMoveIterator(ScoreDirector<WorkPlan> director) {
        throw new UnsupportedOperationException("only random moves");
    }

    @Override
    public Iterator<AbstractMove<WorkPlan>> createRandomMoveIterator(ScoreDirector<WorkPlan> director, Random random) {
        return new MoveStream(director.getWorkingSolution(), random);
    }
}
