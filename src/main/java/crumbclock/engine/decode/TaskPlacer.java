package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Task;

/**
 * Finds the earliest place of one task, given all that is booked, and books it. Every rule is kept here or in the
 * books that are asked, or, for what follows from a start and an end, by the {@link EndPlacer}; what cannot be kept raises an earlier task or ends with {@link Outcome#NEVER}.
 */
final class TaskPlacer {

    /** Answer of the tries below: it has its place. */
    static final int FREE = -1;
    /** Answer of the tries below besides {@link #FREE} and a later start: the obstacle says whom to raise. */
    static final int RAISE = -2;

    private final Board board;
    private final Obstacle obstacle;
    private final UnitScope scope;
    private final int horizon;
    private final StayPlacer stays;
    private final HandsPlacer hands;
    private final EndPlacer ends;
    TaskPlacer(Board board, Obstacle obstacle, UnitScope scope) {
        this.board = board;
        this.obstacle = obstacle;
        this.scope = scope;
        this.horizon = board.compiled.horizon;
        this.stays = new StayPlacer(board);
        this.hands = new HandsPlacer(board);
        this.ends = new EndPlacer(board, obstacle, scope, stays, hands);
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
        int blocked = Math.max(hands.mustStayUntil(task), ends.presenceBlock(task, start, end));
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
        return ends.finish(task, start, end);
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
        boolean elastic = task.elastic && scope.hasTaker(task);
        board.inPerson[task.index] = hands.bookTouch(task.inPeople, start, task.inMinutes);
        if (!elastic) {
            return tryFixedStay(task, start);
        }
        boolean takenHere = scope.takenInUnit(task);
        int until = takenHere ? start + task.leastLength() : ends.lastPossibleEnd(task, start);
        int blocked = Math.max(stays.blockedUntil(task, start, until), ends.presenceBlock(task, start, start + task.leastLength()));
        if (blocked > start) {
            obstacle.rule = stays.rule();
            return blocked;
        }
        if (!takenHere) {
            stays.book(task, start, until);
        }
        int later = ends.finish(task, start, Math.max(start + task.leastLength(), task.earliestEnd));
        board.open[task.index] = true;
        board.openEnded[task.index] = !takenHere;
        return later;
    }

    /** A stay that nothing takes out: ends as soon as it may. */
    private int tryFixedStay(Task task, int start) {
        int least = Math.max(start + task.leastLength(), task.earliestEnd);
        int last = ends.lastPossibleEnd(task, start);
        int touch = hands.findTouch(task.outPeople, least - task.outMinutes, task.outMinutes, last);
        int end = touch + task.outMinutes;
        if (touch < 0 || end > last) {
            obstacle.rule = Rule.R04;
            return start + 1;
        }
        int blocked = Math.max(stays.blockedUntil(task, start, end), ends.presenceBlock(task, start, end));
        if (blocked > start) {
            obstacle.rule = stays.rule();
            return blocked;
        }
        stays.book(task, start, end);
        board.outPerson[task.index] = hands.bookTouch(task.outPeople, end - task.outMinutes, task.outMinutes);
        return ends.finish(task, start, end);
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
        int blocked = ends.presenceBlock(task, best, bestEnd);
        if (blocked > best) {
            obstacle.rule = Rule.R05;
            return blocked;
        }
        if (!stays.bookOven(task, bestCavity, best, bestEnd, hands)) {
            obstacle.rule = Rule.R03;
            return best + 1;
        }
        return ends.finish(task, best, bestEnd);
    }

    /**
     * Pans of one unit go in together: a bake of this unit that would begin a little before this one, and shut the
     * door on it, is put off until this one is ready, when its own waits allow that.
     */
    private int alignWith(Task task, int at) {
        Task first = null;
        for (Task earlier : scope.members()) {
            if (mayWaitFor(earlier, task, at)) {
                first = first == null ? earlier : first;
                scope.raise(earlier, at);
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
                if (start > latest && !scope.tolerated(before, (int) (start - latest))) {
                    obstacle.rule = Rule.R02;
                    obstacle.raise(before, board.start[before.index] + (int) (start - latest));
                    return true;
                }
            }
        }
        return false;
    }

    private int surfaceBlock(Task task, int start, int end) {
        return task.spots.length == 0 && task.step.place().isEmpty() ? FREE : stays.blockedUntil(task, start, end);
    }

}
