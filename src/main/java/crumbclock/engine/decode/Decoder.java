package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a timetable from an order of work: serial schedule generation over units.
 *
 * <p>{@link #decode} mends what does not work out, always in the same way: a task outside the unit that must start
 * later gets a bound and the decode begins anew; a unit without a place waits until the others are placed; then its order is
 * placed in the next {@linkplain #BUFFERED way}. Its timetable is always sound.
 *
 * <p>{@link #decodeOnce} mends nothing: it goes through the units once, and {@link #brokenMinutes} and {@link #stuckUnits} count what
 * did not work out.
 * A search asks it thousands of times a second, and keeps what breaks nothing.
 *
 * <p>Not thread-safe: one for each search. A decode depends on the order of work alone.
 */
public final class Decoder {

    /**
     * Ways to place an order, in the order in which they are tried: unit by unit or all units together, with its
     * wished buffer kept free (backward only) or without, and not at all.
     */
    public static final int BUFFERED = 0;
    public static final int BUFFERED_TOGETHER = 1;
    public static final int SPLIT = 2;
    public static final int TOGETHER = 3;
    public static final int LEFT_OUT = 4;

    /** Bounds raised in one decode before the order concerned is placed as a whole. */
    private static final int MOST_RAISES = 40;

    private final CompiledProblem compiled;
    private final Board board;
    private final Obstacle obstacle = new Obstacle();
    private final UnitPlacer units;
    private final FixedWork fixedWork;
    private final boolean[] active;
    private final int[] release;
    private final int[] way;
    private final Rule[] reason;
    private final Task[] reasonTask;
    private final boolean[] done;
    private final int[] extraRelease;
    private long schedules;
    private final boolean[] stuck;
    private int stuckUnits;

    public Decoder(CompiledProblem compiled) {
        this.compiled = compiled;
        board = new Board(compiled);
        units = new UnitPlacer(board, obstacle);
        fixedWork = new FixedWork(board);
        active = new boolean[compiled.tasks.length];
        release = new int[compiled.tasks.length];
        extraRelease = new int[compiled.tasks.length];
        way = new int[compiled.orders.length];
        reason = new Rule[compiled.orders.length];
        reasonTask = new Task[compiled.orders.length];
        done = new boolean[compiled.units.fine.length];
        stuck = new boolean[compiled.orders.length];
    }

    public CompiledProblem compiled() {
        return compiled;
    }

    /** The timetable of the last decode. */
    public Board board() {
        return board;
    }

    /** Schedules generated so far: one for each pass over the units, mended ones included. */
    public long schedules() {
        return schedules;
    }

    /** Whether the order found no place in the last {@link #decodeOnce}, though it was to be placed. */
    public boolean isStuck(int order) {
        return stuck[order];
    }

    /** Whether the order is wholly part of the last decode's timetable. */
    public boolean isPossible(int order) {
        return way[order] != LEFT_OUT && !stuck[order];
    }

    /** The rule that was in the way when an order was left out. */
    public Rule reason(int order) {
        return reason[order];
    }

    /** The step that found no place when an order was left out. */
    public Task reasonTask(int order) {
        return reasonTask[order];
    }

    /** First abstract minute of each unit in the last decode; the horizon for units that were left out. */
    public int[] unitStarts() {
        int[] starts = new int[compiled.units.fine.length];
        Arrays.fill(starts, compiled.horizon);
        for (Task task : compiled.tasks) {
            if (board.placed[task.index]) {
                int unit = compiled.units.unitOf[task.index];
                starts[unit] = Math.min(starts[unit], board.start[task.index]);
            }
        }
        return starts;
    }

    /** Decodes all orders and mends what does not work out. {@code sequence} holds each unit's index once. */
    public void decode(int[] sequence) {
        Arrays.fill(way, compiled.mirrored ? BUFFERED : SPLIT);
        mend(sequence);
    }

    /** The same for the wanted orders only, by order index; the others are left out. */
    public void decode(int[] sequence, boolean[] wanted) {
        for (int order = 0; order < way.length; order++) {
            way[order] = !wanted[order] ? LEFT_OUT : compiled.mirrored ? BUFFERED : SPLIT;
        }
        mend(sequence);
    }

    /** How the orders had to be placed in the last decode, by order; for {@link #decodeOnce}. */
    public int[] ways() {
        return way.clone();
    }

    /** Bounds that mending had to put on tasks in the last decode, by task; for {@link #decodeOnce}. */
    public int[] bounds() {
        return extraRelease.clone();
    }

    /**
     * Decodes in one pass, with orders placed as an earlier decode found out they must be.
     *
     * @param ways   for each order
     * @param bounds earliest abstract start of each task, as {@link #bounds} gave them
     */
    public void decodeOnce(int[] sequence, int[] ways, int[] bounds) {
        System.arraycopy(ways, 0, way, 0, way.length);
        System.arraycopy(bounds, 0, extraRelease, 0, bounds.length);
        schedules++;
        units.tolerate(true);
        begin();
        pass(sequence, true);
        units.tolerate(false);
        if (stuckUnits > 0) {
            for (Task task : compiled.tasks) {
                if (task.order >= 0 && active[task.index] && !board.placed[task.index]) {
                    stuck[task.order] = true;
                }
            }
        }
    }

    /** Minutes by which bounds broke in the last {@link #decodeOnce}. */
    public long brokenMinutes() {
        return units.brokenMinutes();
    }

    /** Units that found no place in the last {@link #decodeOnce}; their orders are not possible, though some of their steps are placed. */
    public int stuckUnits() {
        return stuckUnits;
    }

    private void mend(int[] sequence) {
        Arrays.fill(extraRelease, 0);
        Arrays.fill(reason, null);
        int raises = 0;
        boolean again = true;
        while (again) {
            schedules++;
            begin();
            Outcome outcome = pass(sequence, false);
            again = outcome != Outcome.PLACED;
            if (outcome == Outcome.RAISE && raises++ < MOST_RAISES) {
                // a little further each time, or it would creep minute by minute
                int task = obstacle.task.index;
                extraRelease[task] = Math.max(extraRelease[task], obstacle.minute) + raises;
            } else if (again) {
                giveWay(obstacle.task);
                raises = 0;
            }
        }
    }

    private void begin() {
        board.reset();
        Arrays.fill(done, false);
        Arrays.fill(stuck, false);
        stuckUnits = 0;
        for (Task task : compiled.tasks) {
            active[task.index] = isWanted(task);
        }
        System.arraycopy(extraRelease, 0, release, 0, release.length);
        if (compiled.mirrored) {
            for (CompiledOrder order : compiled.orders) {
                if (way[order.index()] < SPLIT) {
                    for (Task finish : order.finishes()) {
                        release[finish.index] = Math.max(release[finish.index],
                                compiled.horizon - order.latestStart() + order.bufferWish());
                    }
                }
            }
        }
        units.begin(active);
        fixedWork.book();
    }

    private boolean isWanted(Task task) {
        if (task.order >= 0) {
            return way[task.order] != LEFT_OUT;
        }
        for (int order : compiled.ordersOfOwner[task.owner]) {
            if (way[order] != LEFT_OUT) {
                return true;
            }
        }
        return false;
    }

    /**
     * Goes through the units until all are placed; units that find no place wait for the next round.
     *
     * @param once nothing is mended: a unit that would need a bound raised outside waits as well
     */
    private Outcome pass(int[] sequence, boolean once) {
        List<Integer> waiting = new ArrayList<>(sequence.length);
        for (int unit : sequence) {
            waiting.add(unit);
        }
        while (!waiting.isEmpty()) {
            List<Integer> left = new ArrayList<>();
            Task firstStuck = null;
            Rule firstRule = null;
            for (int unit : waiting) {
                Outcome outcome = placeWithBefore(unit);
                if (outcome == Outcome.RAISE && !once) {
                    return outcome;
                }
                if (outcome != Outcome.PLACED) {
                    left.add(unit);
                    if (firstStuck == null) {
                        firstStuck = obstacle.task;
                        firstRule = obstacle.rule;
                    }
                }
            }
            stuckUnits = left.size();
            if (left.size() == waiting.size()) {
                obstacle.task = firstStuck;
                obstacle.rule = firstRule;
                return Outcome.NEVER;
            }
            waiting = left;
        }
        return Outcome.PLACED;
    }

    private Outcome placeWithBefore(int unit) {
        if (done[unit]) {
            return Outcome.PLACED;
        }
        Unit fine = compiled.units.fine[unit];
        Task[] members = members(fine);
        for (Task member : members) {
            for (var link : member.before) {
                int before = compiled.units.unitOf[link.from().index];
                if (!done[before] && active[link.from().index] && !board.placed[link.from().index] && !isIn(members, link.from())) {
                    Outcome outcome = placeWithBefore(before);
                    if (outcome != Outcome.PLACED) {
                        return outcome;
                    }
                }
            }
        }
        Outcome outcome = units.place(units.open(members, active), release);
        if (outcome == Outcome.PLACED) {
            done[unit] = true;
            if (members != fine.members()) {
                for (Task member : members) {
                    done[compiled.units.unitOf[member.index]] = true;
                }
            }
        }
        return outcome;
    }

    private boolean isTogether(int order) {
        return way[order] == TOGETHER || way[order] == BUFFERED_TOGETHER;
    }

    private static boolean isIn(Task[] members, Task task) {
        for (Task member : members) {
            if (member == task) {
                return true;
            }
        }
        return false;
    }

    /** The unit's own members; with all other open units of its orders, where an order is placed as a whole. */
    private Task[] members(Unit unit) {
        boolean together = false;
        for (int order : unit.orders()) {
            together |= isTogether(order);
        }
        if (!together) {
            return unit.members();
        }
        boolean[] taken = new boolean[compiled.units.fine.length];
        List<Unit> group = new ArrayList<>();
        take(unit.index(), taken, group);
        // orders that share a bowl, and are both placed as a whole, are placed together
        for (int next = 0; next < group.size(); next++) {
            for (int order : group.get(next).orders()) {
                if (isTogether(order)) {
                    for (int other : compiled.units.unitsOfOrder[order]) {
                        take(other, taken, group);
                    }
                }
            }
        }
        List<Task> members = new ArrayList<>();
        group.forEach(part -> members.addAll(List.of(part.members())));
        return compiled.units.inOrder(members);
    }

    private void take(int unit, boolean[] taken, List<Unit> group) {
        if (!taken[unit] && !done[unit]) {
            taken[unit] = true;
            group.add(compiled.units.fine[unit]);
        }
    }

    /** An order whose task is stuck becomes easier to place, or is left out. */
    private void giveWay(Task stuck) {
        int[] orders = stuck.order >= 0 ? new int[] {stuck.order} : compiled.ordersOfOwner[stuck.owner];
        for (int order : orders) {
            if (way[order] != LEFT_OUT) {
                way[order]++;
                reason[order] = obstacle.rule;
                reasonTask[order] = stuck;
                if (way[order] == LEFT_OUT) {
                    // what was found out while it was there need not hold without it
                    Arrays.fill(extraRelease, 0);
                }
            }
        }
    }
}
