package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Makes a timetable from an order of work: serial schedule generation over units.
 *
 * <p>{@link #decode} mends what does not work out, always in the same way: a task outside the unit that must start
 * later gets a bound and the decode goes back to where that matters; a unit without a place waits until the others are placed; then its order is
 * placed in the next {@linkplain #BUFFERED way}. Its timetable is always sound.
 *
 * <p>{@link #decodeOnce} hardly mends: it raises a few bounds ({@link QuickRaises}), and {@link #brokenMinutes} and
 * {@link #stuckUnits} count what else did not work out.
 * A search asks it thousands of times a second, and keeps what breaks nothing.
 *
 * <p>Not thread-safe: one for each search. A decode depends on the order of work alone, though what it has in common with the
 * last one is not made again ({@link Rounds}).
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
    private final Terms terms;
    private final Rule[] reason;
    private final Task[] reasonTask;
    /** The bounds that the last quick decode was given, and those it found out. */
    private final int[] given;
    private final QuickRaises raises = new QuickRaises();
    private final Rounds rounds;
    private long schedules;
    private final boolean[] stuck;
    private int stuckUnits;
    /** Whether the board holds the timetable of a quick decode, on which the next one can build. */
    private boolean holdsQuick;

    public Decoder(CompiledProblem compiled) {
        this.compiled = compiled;
        board = new Board(compiled);
        units = new UnitPlacer(board, obstacle);
        fixedWork = new FixedWork(board);
        terms = new Terms(compiled);
        given = new int[compiled.tasks.length];
        reason = new Rule[compiled.orders.length];
        reasonTask = new Task[compiled.orders.length];
        stuck = new boolean[compiled.orders.length];
        rounds = new Rounds(board, obstacle, units, new UnitGroups(compiled, terms.ways()), terms.active(), terms.release());
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
        return !terms.isLeftOut(order) && !stuck[order];
    }

    /** The rule that was in the way when an order was left out. */
    public Rule reason(int order) {
        return reason[order];
    }

    /** The step that found no place when an order was left out. */
    public Task reasonTask(int order) {
        return reasonTask[order];
    }

    /** Copies abstract starts and ends of the last timetable, by task; −1 where a task has no place. */
    public void copyTimes(int[] starts, int[] ends) {
        for (int task = 0; task < starts.length; task++) {
            starts[task] = board.placed[task] ? board.start[task] : -1;
            ends[task] = board.placed[task] ? board.end[task] : -1;
        }
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
        decode(sequence, () -> false);
    }

    /**
     * The same, unless it takes too long.
     *
     * @param giveUp asked before each attempt
     * @return false when it was given up; what it decoded so far is no timetable
     */
    public boolean decode(int[] sequence, BooleanSupplier giveUp) {
        boolean[] all = new boolean[compiled.orders.length];
        Arrays.fill(all, true);
        return mend(sequence, all, giveUp);
    }

    /** The same for the wanted orders only, by order index; the others are left out. */
    public void decode(int[] sequence, boolean[] wanted) {
        mend(sequence, wanted, () -> false);
    }

    /** How the orders had to be placed in the last decode, by order; for {@link #decodeOnce}. */
    public int[] ways() {
        return terms.ways().clone();
    }

    /** Bounds that mending had to put on tasks in the last decode, by task; for {@link #decodeOnce}. */
    public int[] bounds() {
        return terms.bounds().clone();
    }

    /**
     * Decodes with hardly anything mended, and with orders placed as an earlier decode found out they must be.
     *
     * @param ways   for each order
     * @param bounds earliest abstract start of each task, as {@link #bounds} gave them
     */
    public void decodeOnce(int[] sequence, int[] ways, int[] bounds) {
        schedules++;
        int turn = holdsQuick ? firstChange(sequence, ways, bounds) : 0;
        if (holdsQuick && turn >= sequence.length) {
            return;
        }
        if (holdsQuick) {
            turn = raises.forgetFrom(turn);
            rounds.backTo(turn);
        } else {
            raises.clear();
        }
        System.arraycopy(bounds, 0, given, 0, bounds.length);
        terms.begin(ways, bounds);
        raises.applyTo(terms.bounds());
        if (holdsQuick) {
            takePart();
            rounds.resume(sequence, turn);
        } else {
            begin(sequence);
        }
        runQuick();
        holdsQuick = true;
        stuckUnits = rounds.unplaced();
        Arrays.fill(stuck, false);
        if (stuckUnits > 0) {
            for (Task task : compiled.tasks) {
                if (task.order >= 0 && terms.active()[task.index] && !board.placed[task.index]) {
                    stuck[task.order] = true;
                }
            }
        }
    }

    /** The first turn in which this quick decode may come out other than the last one; past the last turn when it cannot. */
    private int firstChange(int[] sequence, int[] ways, int[] bounds) {
        int turn = rounds.firstDifference(sequence);
        for (int order = 0; order < ways.length; order++) {
            if (ways[order] != terms.ways()[order]) {
                turn = Math.min(turn, rounds.firstTurnOf(order));
            }
        }
        for (Task task : compiled.tasks) {
            if (bounds[task.index] != given[task.index]) {
                turn = Math.min(turn, rounds.firstTurnOf(task));
            }
        }
        return turn;
    }

    /** Goes through the units, and back a few times where a task should have started later. */
    private void runQuick() {
        while (!raises.isUsedUp()) {
            if (rounds.run(false) != Outcome.RAISE) {
                return;
            }
            int turn = rounds.turn();
            int back = rounds.firstTurnOf(obstacle.task);
            if (raises.add(turn, obstacle.task.index, obstacle.minute, back)) {
                rounds.backTo(back);
                terms.raise(obstacle.task, obstacle.minute);
            } else {
                rounds.backTo(turn);
            }
        }
        units.tolerate(true);
        rounds.run(true);
        units.tolerate(false);
    }

    /** Minutes by which bounds broke in the last {@link #decodeOnce}. */
    public long brokenMinutes() {
        return units.brokenMinutes();
    }

    /** Units that found no place in the last {@link #decodeOnce}; their orders are not possible, though some of their steps are placed. */
    public int stuckUnits() {
        return stuckUnits;
    }

    private boolean mend(int[] sequence, boolean[] wanted, BooleanSupplier giveUp) {
        terms.begin(wanted);
        Arrays.fill(reason, null);
        Arrays.fill(stuck, false);
        holdsQuick = false;
        schedules++;
        begin(sequence);
        int raisedSoFar = 0;
        Outcome outcome = rounds.run(false);
        while (outcome != Outcome.PLACED) {
            if (giveUp.getAsBoolean()) {
                return false;
            }
            schedules++;
            if (outcome == Outcome.RAISE && raisedSoFar++ < MOST_RAISES) {
                // a little further each time, or it would creep minute by minute
                Task task = obstacle.task;
                rounds.backTo(rounds.firstTurnOf(task));
                terms.raise(task, Math.max(terms.bounds()[task.index], obstacle.minute) + raisedSoFar);
            } else {
                giveWay(obstacle.task);
                raisedSoFar = 0;
            }
            outcome = rounds.run(false);
        }
        stuckUnits = 0;
        return true;
    }

    private void begin(int[] sequence) {
        board.reset();
        terms.apply();
        units.begin(terms.active());
        fixedWork.book();
        rounds.begin(sequence);
    }

    /** After a change of terms: who takes part. */
    private void takePart() {
        terms.apply();
        for (Task task : compiled.tasks) {
            units.takePart(task, terms.active()[task.index]);
        }
    }

    /** An order whose task is stuck becomes easier to place, or is left out. */
    private void giveWay(Task stuckTask) {
        int[] orders = stuckTask.order >= 0 ? new int[] {stuckTask.order} : compiled.ordersOfOwner[stuckTask.owner];
        int turn = rounds.firstTurnOf(stuckTask);
        boolean leftOut = false;
        for (int order : orders) {
            if (!terms.isLeftOut(order)) {
                turn = Math.min(turn, rounds.firstTurnOf(order));
                terms.giveWay(order);
                reason[order] = obstacle.rule;
                reasonTask[order] = stuckTask;
                leftOut |= terms.isLeftOut(order);
            }
        }
        if (leftOut) {
            // what was found out while it was there need not hold without it
            for (Task task : compiled.tasks) {
                if (terms.isBound(task)) {
                    turn = Math.min(turn, rounds.firstTurnOf(task));
                    terms.letGo(task);
                }
            }
        }
        rounds.backTo(turn);
        takePart();
    }
}
