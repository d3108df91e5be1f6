package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.book.CavityBook;
import crumbclock.engine.book.IntList;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;

/** Where a thing stands or bakes: shelves, surfaces and ovens, asked in the order that the step prefers. */
final class StayPlacer {

    private static final int FREE = -1;
    private static final int ON_SHELVES = Integer.MAX_VALUE;

    private final Board board;
    private Rule rule = Rule.R10;
    /** What the last question found: a surface, or {@link #ON_SHELVES}. */
    private int found;
    private int ovenEnd;

    StayPlacer(Board board) {
        this.board = board;
    }

    /** The rule that was in the way last. */
    Rule rule() {
        return rule;
    }

    /**
     * −1 when the thing has room for {@code [from, until)} in one of its candidate places, in order of preference, which
     * {@link #book} then takes; else the first later start worth asking for.
     */
    int blockedUntil(Task task, int from, int until) {
        found = -1;
        if (task.step.place().isEmpty()) {
            return FREE;
        }
        int next = board.compiled.horizon + 1;
        boolean shelvesAsked = false;
        for (int spot : task.spots) {
            if (spot >= 0 && shelvesAsked) {
                continue;
            }
            shelvesAsked |= spot >= 0;
            int blocked = spot >= 0 ? board.shelves.blockedUntil(task, from, until) : surfaceBlock(task, -1 - spot, from, until);
            if (blocked <= from) {
                found = spot >= 0 ? ON_SHELVES : -1 - spot;
                return FREE;
            }
            next = Math.min(next, blocked);
            rule = spot >= 0 ? Rule.R10 : Rule.R06;
        }
        if (task.spots.length == 0) {
            rule = Rule.R11;
        }
        return Math.max(from + 1, next);
    }

    private int surfaceBlock(Task task, int surface, int from, int until) {
        int blocked = board.surfaces[surface].blockedUntil(from, until, task.areaMm2);
        if (blocked < 0 && board.compiled.hasFreeFrom && task.open) {
            IntList here = board.onSurface[surface];
            for (int index = 0; index < here.size(); index++) {
                Task other = board.compiled.tasks[here.get(index)];
                boolean stands = board.placed[other.index] && board.surface[other.index] == surface && other != task;
                boolean meet = stands && other.open
                        && ((task.contains & other.freeFrom) | (task.freeFrom & other.contains)) != 0;
                int otherEnd = meet && board.openEnded[other.index] ? board.compiled.horizon : meet ? board.end[other.index] : 0;
                if (meet && board.start[other.index] < until && from < otherEnd) {
                    blocked = Math.max(blocked, otherEnd);
                }
            }
        }
        return blocked;
    }

    /** Takes what the last question with the same arguments found. */
    void book(Task task, int from, int until) {
        if (task.step.place().isEmpty()) {
            return;
        }
        if (found == ON_SHELVES) {
            board.kind[task.index] = board.shelves.kindFound();
            board.shelves.book(task);
        } else {
            board.kind[task.index] = board.compiled.kitchen().surfaces().get(found).kind();
            board.stand(task, found, from, until);
        }
    }

    /** Ends a stay that was booked until {@code bookedUntil}. */
    void shorten(Task task, int bookedUntil, int until) {
        int surface = board.surface[task.index];
        if (surface >= 0) {
            board.surfaces[surface].release(until, bookedUntil, task.areaMm2);
        } else if (task.step.place().isPresent()) {
            board.shelves.shorten(task, until);
        }
    }

    int ovenEnd() {
        return ovenEnd;
    }

    /** −1 when the bake can start at {@code start} in the cavity ({@link #ovenEnd} says when it ends); else a later start. */
    int tryOven(Task task, int cavity, int start, HandsPlacer hands) {
        CavityBook book = board.cavities[cavity];
        int shortest = Math.max(start + task.leastLength(), task.earliestEnd);
        int longest = task.most == Integer.MAX_VALUE ? shortest : start + task.mostLength();
        if (shortest > longest) {
            rule = Rule.R02;
            return start + shortest - longest;
        }
        int next = start + 1;
        int horizon = board.compiled.horizon;
        if (shortest > Math.min(horizon, task.latestEnd)) {
            rule = Rule.R14;
            return horizon + 1;
        }
        if (!canTouch(task, book, start, start + task.inMinutes, true, hands)) {
            rule = Rule.R04;
            int touch = hands.findTouch(task.inPeople, start + 1, task.inMinutes, horizon);
            return touchOrShared(book, start + 1, touch < 0 ? horizon + 1 : touch);
        }
        for (int end = shortest; end <= Math.min(longest, Math.min(horizon, task.latestEnd)); end++) {
            if (!canTouch(task, book, end - task.outMinutes, end, false, hands)) {
                rule = Rule.R04;
                if (end == longest) {
                    int touch = hands.findTouch(task.outPeople, end - task.outMinutes + 1, task.outMinutes, horizon);
                    int later = touch < 0 ? horizon + 1 : touch + task.outMinutes - (longest - start);
                    next = Math.max(next, touchOrShared(book, start + 1, later));
                }
                continue;
            }
            int blocked = book.blockedUntil(task, start, end);
            if (blocked < 0) {
                ovenEnd = end;
                return FREE;
            }
            rule = Rule.R07;
            if (end == shortest) {
                next = Math.max(next, blocked - (board.compiled.mirrored ? longest - shortest : 0));
            }
        }
        return Math.max(next, start + 1);
    }

    /** A hand is free again at {@code later}; but a touch shared with a load that is in the oven till then may come before. */
    private int touchOrShared(CavityBook book, int next, int later) {
        Span real = board.compiled.mirror(new Span(next, Math.max(next, Math.min(later, board.compiled.horizon))));
        return book.isUsed(real.start(), real.end()) ? next : Math.max(next, later);
    }

    private boolean canTouch(Task task, CavityBook book, int from, int until, boolean first, HandsPlacer hands) {
        int[] who = first ? task.inPeople : task.outPeople;
        return until == from || shared(task, book, from, until, first) != null || hands.toucher(who, from, until - from) != -1;
    }

    /** Another bake whose touch is the same real span, by somebody who may also touch this one. */
    private Task shared(Task task, CavityBook book, int from, int until, boolean first) {
        Span real = board.compiled.mirror(new Span(from, until));
        Task other = book.sharedTouch(task, real.start(), real.end(), first != board.compiled.mirrored);
        if (other == null) {
            return null;
        }
        int person = first ? board.inPerson[other.index] : board.outPerson[other.index];
        for (int allowed : first ? task.inPeople : task.outPeople) {
            if (allowed == person) {
                return other;
            }
        }
        return null;
    }

    /**
     * Books a bake and its touches.
     *
     * @return false when whoever puts it in has no minutes left that day to take it out; some of it is booked then
     */
    boolean bookOven(Task task, int cavity, int start, int end, HandsPlacer hands) {
        CavityBook book = board.cavities[cavity];
        Task in = shared(task, book, start, start + task.inMinutes, true);
        Task out = shared(task, book, end - task.outMinutes, end, false);
        if (!book.hasRoomFor(task, start, end) && book.blockedUntil(task, start, end) >= 0) {
            throw new IllegalStateException("the oven changed its mind about " + task);
        }
        book.book();
        board.cavity[task.index] = cavity;
        board.inPerson[task.index] = in != null ? board.inPerson[in.index]
                : hands.bookTouch(task.inPeople, start, task.inMinutes);
        board.outPerson[task.index] = out != null ? board.outPerson[out.index]
                : hands.bookTouch(task.outPeople, end - task.outMinutes, task.outMinutes);
        return task.outMinutes == 0 || board.outPerson[task.index] >= 0;
    }
}
