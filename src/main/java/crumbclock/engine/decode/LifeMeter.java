package crumbclock.engine.decode;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.work.LifeLimit;
import crumbclock.engine.model.Limit;
import crumbclock.engine.model.Task;

/** How long things were out of the cold, and how much of their life is used (rule R12). */
final class LifeMeter {

    private final Board board;

    LifeMeter(Board board) {
        this.board = board;
    }

    /** Minutes by which a way is too long, at least 1 when its limit is broken; 0 when kept, or not placed yet. */
    int overMinutes(Limit limit) {
        if (!board.placed[limit.from().index] || !board.placed[limit.to().index]) {
            return 0;
        }
        int from = realEnd(limit.from());
        int until = realStart(limit.to());
        if (until <= from) {
            return 0;
        }
        return limit.cold().isPresent() ? overOut(limit, from, until) : overLife(limit, from, until);
    }

    private int overOut(Limit limit, int from, int until) {
        int out = until - from;
        for (Task stay : limit.held()) {
            if (board.placed[stay.index] && board.kind[stay.index] != null && board.kind[stay.index].keepsCold()) {
                out -= overlap(stay, from, until);
            }
        }
        return Math.max(0, out - limit.cold().orElseThrow().mostMinutesOut());
    }

    private int overLife(Limit limit, int from, int until) {
        LifeLimit life = limit.life().orElseThrow();
        int ambient = until - from;
        long burnt = 0;
        for (Task stay : limit.held()) {
            if (board.placed[stay.index] && board.kind[stay.index] != null) {
                int minutes = overlap(stay, from, until);
                ambient -= minutes;
                burnt += minutes * (LifeLimit.LIFE / life.lifeMinutesIn(board.kind[stay.index]));
            }
        }
        long share = LifeLimit.LIFE / life.lifeMinutesIn(PlaceKind.AMBIENT);
        burnt += ambient * share;
        return burnt <= LifeLimit.LIFE ? 0 : (int) Math.max(1, (burnt - LifeLimit.LIFE) / share);
    }

    private int overlap(Task stay, int from, int until) {
        return Math.max(0, Math.min(realEnd(stay), until) - Math.max(realStart(stay), from));
    }

    private int realStart(Task task) {
        return board.compiled.realStart(board.start[task.index], board.end[task.index]);
    }

    private int realEnd(Task task) {
        return board.compiled.realEnd(board.start[task.index], board.end[task.index]);
    }
}
