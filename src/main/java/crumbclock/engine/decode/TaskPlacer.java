package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.book.PoolBook;
import crumbclock.engine.model.Limit;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;

/**
 * Finds the earliest place of one task, given all that is booked, and books it. Every rule is kept here or in the
 * books that are asked; what cannot be kept raises an earlier task or ends with {@link Outcome#NEVER}.
 */
final class TaskPlacer {

    private static final int FREE = -1;

    private final Board board;
    private final Obstacle obstacle;
    private final int horizon;
    private final StayPlacer stays;
    private final HandsPlacer hands;
    private final LifeMeter lives;
    /** Number of the unit being placed, by task: tells which tasks are placed together. */
    private final int[] unitStamp;
    private int stamp;
    private Task[] members = {};
    /** Lower bounds on starts within the unit, by task; the unit placer's own. */
    private final int[] bound;
    private boolean tolerates;
    private long brokenMinutes;

    TaskPlacer(Board board, Obstacle obstacle, int[] unitStamp, int[] bound) {
        this.board = board;
        this.bound = bound;
        this.obstacle = obstacle;
        this.horizon = board.compiled.horizon;
        this.unitStamp = unitStamp;
        this.stays = new StayPlacer(board);
        this.hands = new HandsPlacer(board);
        this.lives = new LifeMeter(board);
    }

    /** Tells which tasks are placed together from now on: those marked {@code newStamp}. */
    void beginUnit(Task[] unitMembers, int newStamp) {
        members = unitMembers;
        stamp = newStamp;
    }

    void begin() {
        brokenMinutes = 0;
    }

    void tolerate(boolean newTolerates) {
        tolerates = newTolerates;
    }

    long brokenMinutes() {
        return brokenMinutes;
    }

    /** A task outside the unit cannot be moved any more: counts by how much it should be, where that is allowed. */
    private boolean tolerated(Task task, int minutes) {
        if (!tolerates || inUnit(task)) {
            return false;
        }
        brokenMinutes += minutes;
        return true;
    }

    boolean inUnit(Task task) {
        return unitStamp[task.index] == stamp;
    }

    /** Places {@code task} at its earliest start at or after {@code from}; leaves no trace when it cannot. */
    Outcome place(Task task, int from) {
        int at = Math.max(from, task.earliestStart);
        for (Link link : task.before) {
            if (board.placed[link.from().index]) {
                at = Math.max(at, board.leastEnd(link.from()) + link.least());
            }
        }
        int mark = board.journal.mark();
        while (at <= horizon) {
            int next = task.handsOn ? tryHandsOn(task, at) : task.bakes ? tryBake(task, at) : tryStay(task, at);
            if (next == FREE) {
                return Outcome.PLACED;
            }
            board.journal.undoTo(mark);
            if (next == RAISE) {
                return Outcome.RAISE;
            }
            at = next;
        }
        return obstacle.never(task);
    }

    /** Answer of the tries below besides {@link #FREE} and a later start: the obstacle says whom to raise. */
    private static final int RAISE = -2;

    private int tryHandsOn(Task task, int at) {
        int start = at;
        int end = Math.max(at, task.earliestEnd);
        if (task.works) {
            if (!hands.find(task, at, task.latestEnd)) {
                obstacle.rule = Rule.R03;
                return horizon + 1;
            }
            start = hands.start();
            end = hands.end();
        } else {
            start = end;
            if (end > task.latestEnd) {
                obstacle.rule = Rule.R14;
                return horizon + 1;
            }
        }
        if (tooLate(task, start)) {
            return RAISE;
        }
        int blocked = Math.max(hands.mustStayUntil(task), presenceBlock(task, start, end));
        if (blocked > start) {
            obstacle.rule = Rule.R05;
            return blocked;
        }
        blocked = surfaceBlock(task, start, end);
        if (blocked > start) {
            obstacle.rule = Rule.R06;
            return blocked;
        }
        hands.book(task);
        return finish(task, start, end);
    }

    private int tryStay(Task task, int at) {
        int start = hands.findTouch(task.inPeople, at, task.inMinutes, horizon);
        if (start < 0) {
            obstacle.rule = Rule.R04;
            return horizon + 1;
        }
        if (tooLate(task, start)) {
            return RAISE;
        }
        if (start + task.leastLength() > task.latestEnd) {
            obstacle.rule = Rule.R14;
            return horizon + 1;
        }
        boolean elastic = task.elastic && hasTaker(task);
        board.inPerson[task.index] = hands.bookTouch(task.inPeople, start, task.inMinutes);
        if (!elastic) {
            return tryFixedStay(task, start);
        }
        boolean takenHere = takenInUnit(task);
        int until = takenHere ? start + task.leastLength() : lastPossibleEnd(task, start);
        int blocked = Math.max(stays.blockedUntil(task, start, until), presenceBlock(task, start, start + task.leastLength()));
        if (blocked > start) {
            obstacle.rule = stays.rule();
            return blocked;
        }
        if (!takenHere) {
            stays.book(task, start, until);
        }
        int later = finish(task, start, Math.max(start + task.leastLength(), task.earliestEnd));
        board.open[task.index] = true;
        board.openEnded[task.index] = !takenHere;
        return later;
    }

    /** Until when a stay may last at all: that long its place is kept while nobody knows when it ends. */
    private int lastPossibleEnd(Task task, int start) {
        int last = Math.min(horizon, task.latestEnd);
        return task.most == Integer.MAX_VALUE ? last : Math.min(last, start + task.mostLength());
    }

    /** A stay that nothing takes out: ends as soon as it may. */
    private int tryFixedStay(Task task, int start) {
        int least = Math.max(start + task.leastLength(), task.earliestEnd);
        int last = lastPossibleEnd(task, start);
        int touch = hands.findTouch(task.outPeople, least - task.outMinutes, task.outMinutes, last);
        int end = touch + task.outMinutes;
        if (touch < 0 || end > last) {
            obstacle.rule = Rule.R04;
            return start + 1;
        }
        int blocked = Math.max(stays.blockedUntil(task, start, end), presenceBlock(task, start, end));
        if (blocked > start) {
            obstacle.rule = stays.rule();
            return blocked;
        }
        stays.book(task, start, end);
        board.outPerson[task.index] = hands.bookTouch(task.outPeople, end - task.outMinutes, task.outMinutes);
        return finish(task, start, end);
    }

    private int tryBake(Task task, int at) {
        int aligned = alignWith(task, at);
        if (aligned == RAISE) {
            return RAISE;
        }
        int best = horizon + 1;
        int bestEnd = 0;
        int bestCavity = -1;
        for (int cavity = 0; cavity < board.cavities.length; cavity++) {
            int start = at;
            while (start < best) {
                int next = stays.tryOven(task, cavity, start, hands);
                if (next == FREE) {
                    best = start;
                    bestEnd = stays.ovenEnd();
                    bestCavity = cavity;
                    break;
                }
                start = next;
            }
        }
        if (bestCavity < 0) {
            obstacle.rule = stays.rule();
            return horizon + 1;
        }
        if (tooLate(task, best)) {
            return RAISE;
        }
        int blocked = presenceBlock(task, best, bestEnd);
        if (blocked > best) {
            obstacle.rule = Rule.R05;
            return blocked;
        }
        if (!stays.bookOven(task, bestCavity, best, bestEnd, hands)) {
            obstacle.rule = Rule.R03;
            return best + 1;
        }
        return finish(task, best, bestEnd);
    }

    /**
     * Pans of one unit go in together: a bake of this unit that would begin a little before this one, and shut the
     * door on it, is put off until this one is ready, when its own waits allow that.
     */
    private int alignWith(Task task, int at) {
        Task first = null;
        for (Task earlier : members) {
            if (mayWaitFor(earlier, task, at)) {
                first = first == null ? earlier : first;
                bound[earlier.index] = Math.max(bound[earlier.index], at);
            }
        }
        if (first == null) {
            return FREE;
        }
        obstacle.rule = Rule.R09;
        obstacle.raise(first, at);
        return RAISE;
    }

    private boolean mayWaitFor(Task earlier, Task task, int at) {
        if (earlier == task || !earlier.bakes || !board.placed[earlier.index] || earlier.fixed
                || earlier.temperatureC != task.temperatureC) {
            return false;
        }
        int start = board.start[earlier.index];
        if (start >= at || at >= start + earlier.inMinutes + earlier.doorShutMinutes) {
            return false;
        }
        for (Link link : earlier.before) {
            if (link.hasMost() && at > board.mostEnd(link.from()) + link.most()) {
                return false;
            }
        }
        return true;
    }

    /** A most wait would break: the task before must start later. */
    private boolean tooLate(Task task, int start) {
        for (Link link : task.before) {
            Task before = link.from();
            if (link.hasMost() && board.placed[before.index]) {
                long latest = (long) board.mostEnd(before) + link.most();
                if (start > latest && !tolerated(before, (int) (start - latest))) {
                    obstacle.rule = Rule.R02;
                    obstacle.raise(before, board.start[before.index] + (int) (start - latest));
                    return true;
                }
            }
        }
        return false;
    }

    private int presenceBlock(Task task, int start, int end) {
        return task.presence ? board.presence.nobodyUntil(start, end) : FREE;
    }

    private int surfaceBlock(Task task, int start, int end) {
        return task.spots.length == 0 && task.step.place().isEmpty() ? FREE : stays.blockedUntil(task, start, end);
    }

    /** Whether what takes it out is still to be placed; where that is recorded, the task's own end bounds say when. */
    private boolean hasTaker(Task task) {
        for (Link link : task.after) {
            if (unitStamp[link.to().index] >= 0 && !link.to().fixed) {
                return true;
            }
        }
        return false;
    }

    private boolean takenInUnit(Task task) {
        for (Link link : task.after) {
            if (inUnit(link.to())) {
                return true;
            }
        }
        return false;
    }

    /** What hangs on a start and an end that are known now: equipment, presence, and the ends of what is taken out. */
    private int finish(Task task, int start, int end) {
        if (task.handsOn && task.step.place().isPresent()) {
            stays.book(task, start, end);
        }
        boolean endKnown = !task.elastic || !hasTaker(task);
        for (Need need : task.takes) {
            boolean recorded = need.last() != task && need.last().fixed;
            boolean known = recorded || need.last() == task && endKnown;
            boolean openEnded = !known && !endsInUnit(need.last());
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

    /** Whether the end of {@code task} will be known before the unit is complete. */
    private boolean endsInUnit(Task task) {
        return inUnit(task) && (!task.elastic || !hasTaker(task) || takenInUnit(task));
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
                if (!tolerated(limit.first(), over)) {
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
            if (first == task && (!task.elastic || !hasTaker(task))) {
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
            if (tolerates && !inUnit(stay) && earliest > latest) {
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
