package crumbclock.engine.decode;

import static crumbclock.engine.decode.TaskPlacer.FREE;
import static crumbclock.engine.decode.TaskPlacer.RAISE;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.book.PoolBook;
import crumbclock.engine.model.Limit;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;

/**
 * Books what follows once a task's start and end are known: equipment taken and given back, presence, lives, and the
 * ends of the open stays that the task takes its cake from.
 */
final class EndPlacer {

    private final Board board;
    private final Obstacle obstacle;
    private final UnitScope scope;
    private final StayPlacer stays;
    private final HandsPlacer hands;
    private final LifeMeter lives;
    private final int horizon;

    EndPlacer(Board board, Obstacle obstacle, UnitScope scope, StayPlacer stays, HandsPlacer hands) {
        this.board = board;
        this.obstacle = obstacle;
        this.scope = scope;
        this.stays = stays;
        this.hands = hands;
        this.lives = new LifeMeter(board);
        this.horizon = board.compiled.horizon;
    }

    /** −1 when somebody is there as long as the task wants, else the first later start worth asking for. */
    int presenceBlock(Task task, int start, int end) {
        return task.presence ? board.presence.nobodyUntil(start, end) : FREE;
    }

    /** Until when a stay may last at all: that long its place is kept while nobody knows when it ends. */
    int lastPossibleEnd(Task task, int start) {
        int last = Math.min(horizon, task.latestEnd);
        return task.most == Integer.MAX_VALUE ? last : Math.min(last, start + task.mostLength());
    }

    /** What hangs on a start and an end that are known now: equipment, presence, and the ends of what is taken out. */
    int finish(Task task, int start, int end) {
        if (task.handsOn && task.step.place().isPresent()) {
            stays.book(task, start, end);
        }
        boolean endKnown = !task.elastic || !scope.hasTaker(task);
        for (Need need : task.takes) {
            boolean recorded = need.last() != task && need.last().fixed;
            boolean known = recorded || need.last() == task && endKnown;
            boolean openEnded = !known && !scope.endsInUnit(need.last());
            int until = openEnded ? horizon : recorded ? Math.max(end, board.end[need.last().index]) : end;
            int blocked = board.pools[need.pool()].blockedUntil(need, start, until);
            if (blocked > start) {
                obstacle.rule = Rule.R06;
                return blocked;
            }
            if (known || openEnded) {
                board.pieces[need.index()] = board.pools[need.pool()].book(need, start, until);
                board.needOpenEnded[need.index()] = openEnded;
            }
        }
        board.place(task, start, end);
        if (endKnown) {
            if (task.presence) {
                board.presence.need(start, end);
            }
            int given = giveBack(task, end);
            if (given != FREE) {
                return given;
            }
        }
        int taken = takeOut(task, start);
        return taken != FREE ? taken : keepLife(task, start);
    }

    /** Rule R12: what ends its way at this task has kept; else the first step of that way must start later. */
    private int keepLife(Task task, int start) {
        for (Limit limit : board.compiled.limitsOf(task)) {
            int over = lives.overMinutes(limit);
            if (over > 0) {
                obstacle.rule = Rule.R12;
                if (limit.first() == task) {
                    return start + over;
                }
                if (!scope.tolerated(limit.first(), over)) {
                    obstacle.raise(limit.first(), board.start[limit.first().index] + over);
                    return RAISE;
                }
            }
        }
        return FREE;
    }

    /** Equipment that is free again when {@code task} ends, taken by an earlier task. */
    private int giveBack(Task task, int end) {
        for (Need need : task.gives) {
            Task first = need.first();
            if (first == task && (!task.elastic || !scope.hasTaker(task))) {
                continue;
            }
            PoolBook pool = board.pools[need.pool()];
            int from = board.start[first.index];
            if (board.needOpenEnded[need.index()]) {
                pool.shorten(need, board.pieces[need.index()], from, horizon, end);
                continue;
            }
            int blocked = pool.blockedUntil(need, from, end);
            if (blocked > from) {
                obstacle.rule = Rule.R06;
                obstacle.raise(first, blocked);
                return RAISE;
            }
            board.pieces[need.index()] = pool.book(need, from, end);
        }
        return FREE;
    }

    /** Ends the open stays that {@code task} takes its cake from: as late as hands allow, so that nothing waits about. */
    private int takeOut(Task task, int start) {
        for (Link link : task.before) {
            Task stay = link.from();
            if (!board.placed[stay.index] || !board.open[stay.index]) {
                continue;
            }
            int latest = Math.min(start - link.least(), Math.min(board.mostEnd(stay), stay.latestEnd));
            int earliest = Math.max(board.leastEnd(stay), link.hasMost() ? start - link.most() : 0);
            if (scope.tolerates() && !scope.inUnit(stay) && earliest > latest) {
                // the most wait broke already, and is counted
                earliest = Math.max(board.leastEnd(stay), latest - 60);
            }
            int touch = latest < earliest ? -1
                    : hands.findLastTouch(stay.outPeople, earliest - stay.outMinutes, stay.outMinutes, latest - stay.outMinutes);
            int end = touch + stay.outMinutes;
            if (touch < 0 || end < earliest) {
                obstacle.rule = Rule.R04;
                return laterTakeOut(task, stay, link, latest, start);
            }
            int from = board.start[stay.index];
            int blocked = Math.max(presenceBlock(stay, from, end),
                    board.openEnded[stay.index] ? FREE : stays.blockedUntil(stay, from, end));
            if (blocked > from) {
                obstacle.rule = stays.rule();
                obstacle.raise(stay, blocked);
                return RAISE;
            }
            if (board.openEnded[stay.index]) {
                stays.shorten(stay, lastPossibleEnd(stay, from), end);
            } else {
                stays.book(stay, from, end);
            }
            board.end(stay, end);
            board.outPerson[stay.index] = hands.bookTouch(stay.outPeople, end - stay.outMinutes, stay.outMinutes);
            if (stay.presence) {
                board.presence.need(from, end);
            }
            int given = giveBack(stay, end);
            if (given != FREE) {
                return given;
            }
        }
        return FREE;
    }

    /** Nobody could take it out in time for {@code start}: the next minute somebody can, or the stay must begin later. */
    private int laterTakeOut(Task task, Task stay, Link link, int latest, int start) {
        int most = Math.min(board.mostEnd(stay), stay.latestEnd);
        int touch = hands.findTouch(stay.outPeople, Math.max(0, latest - stay.outMinutes + 1), stay.outMinutes, horizon);
        if (touch < 0) {
            return horizon + 1;
        }
        int end = touch + stay.outMinutes;
        if (end <= most) {
            return Math.max(start + 1, end + link.least());
        }
        obstacle.raise(stay, board.start[stay.index] + Math.max(1, end - most));
        return RAISE;
    }
}
