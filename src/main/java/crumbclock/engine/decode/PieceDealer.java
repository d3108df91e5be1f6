package crumbclock.engine.decode;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.UnitUse;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Says which piece of equipment each use takes. Where the book only counted, uses in the order of their starts take
 * the lowest piece that is free and clean: that never needs more pieces than are in use at one moment.
 */
final class PieceDealer {

    private record Use(Need need, int from, int until) {
    }

    private final Board board;
    private final CompiledProblem compiled;

    PieceDealer(Board board) {
        this.board = board;
        this.compiled = board.compiled;
    }

    Map<Task, List<UnitUse>> deal() {
        Map<Task, List<UnitUse>> dealt = new HashMap<>();
        for (int pool = 0; pool < board.pools.length; pool++) {
            List<Use> uses = uses(pool);
            Pool of = compiled.kitchen().pools().get(pool);
            int[] freeFrom = new int[of.count()];
            java.util.Arrays.fill(freeFrom, Integer.MIN_VALUE);
            for (Use use : uses) {
                Task owner = use.need.owner();
                if (owner.fixed || board.pools[pool].followsPieces()) {
                    for (int piece : board.pieces[use.need.index()]) {
                        give(dealt, owner, of, piece, use);
                        freeFrom[piece] = use.until + of.cleanMinutes();
                    }
                    continue;
                }
                int left = use.need.units();
                for (int piece = 0; piece < freeFrom.length && left > 0; piece++) {
                    if (freeFrom[piece] <= use.from) {
                        give(dealt, owner, of, piece, use);
                        freeFrom[piece] = use.until + of.cleanMinutes();
                        left--;
                    }
                }
            }
        }
        return dealt;
    }

    private void give(Map<Task, List<UnitUse>> dealt, Task owner, Pool pool, int piece, Use use) {
        dealt.computeIfAbsent(owner, key -> new ArrayList<>()).add(new UnitUse(pool.id(), piece, use.from, use.until));
    }

    private List<Use> uses(int pool) {
        List<Use> uses = new ArrayList<>();
        for (Need need : compiled.needs) {
            if (need.pool() == pool && board.placed[need.owner().index] && board.placed[need.first().index]
                    && board.placed[need.last().index]) {
                Span span = compiled.mirror(new Span(board.start[need.first().index], board.end[need.last().index]));
                uses.add(new Use(need, span.start(), span.end()));
            }
        }
        uses.sort(Comparator.comparingInt(Use::from).thenComparingInt(Use::until)
                .thenComparingInt(use -> use.need.index()));
        return uses;
    }
}
