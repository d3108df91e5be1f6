package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.book.IntList;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Goes through the units of an order of work until all are placed: what finds no place waits for the next round.
 *
 * <p>It remembers how things stood before each turn, so that a decode that differs from the last one only from some turn on
 * takes back what came after it, and goes on from there. That is the whole speed of mending a thousand cakes, and some of
 * the speed of a search.
 */
final class Rounds {

    private static final int NEVER_SEEN = Integer.MAX_VALUE;

    private final CompiledProblem compiled;
    private final Board board;
    private final Obstacle obstacle;
    private final UnitPlacer placer;
    private final UnitGroups groups;
    /** By task: whether it takes part, and its earliest start. */
    private final boolean[] active;
    private final int[] release;

    private final boolean[] done;
    private final IntList doneLog = new IntList();
    /** By unit: the first turn in which its tasks, or its ways to be placed, were looked at. */
    private final int[] firstSeen;
    private final IntList seenLog = new IntList();

    private final List<Round> rounds = new ArrayList<>();
    private int roundCount;
    private Turn[] turns = {};
    private int turnCount;

    /** One way through all units that are still without a place. */
    private static final class Round {
        int firstTurn;
        int[] waiting = {};
        int count;
        int next;
        int[] left = {};
        int leftCount;
        /** What stood in the way of the first unit left. */
        Task stuck;
        Rule rule;
    }

    /** How things stood before a unit had its turn. */
    private static final class Turn {
        int journal;
        int done;
        int seen;
        int left;
        long broken;
    }

    Rounds(Board board, Obstacle obstacle, UnitPlacer placer, UnitGroups groups, boolean[] active, int[] release) {
        this.compiled = board.compiled;
        this.board = board;
        this.obstacle = obstacle;
        this.placer = placer;
        this.groups = groups;
        this.active = active;
        this.release = release;
        done = groups.done();
        firstSeen = new int[done.length];
    }

    /** From an empty board on, in this order of work. */
    void begin(int[] sequence) {
        Arrays.fill(done, false);
        Arrays.fill(firstSeen, NEVER_SEEN);
        doneLog.clear();
        seenLog.clear();
        turnCount = 0;
        roundCount = 0;
        addRound(sequence, sequence.length);
    }

    /** From turn {@code turn} of the last decode on, in an order of work that is the same up to there. */
    void resume(int[] sequence, int turn) {
        backTo(turn);
        Round first = rounds.get(0);
        System.arraycopy(sequence, first.next, first.waiting, first.next, first.count - first.next);
    }

    /** The first turn at which two orders of work differ. */
    int firstDifference(int[] sequence) {
        int[] old = rounds.get(0).waiting;
        int turn = 0;
        while (turn < sequence.length && old[turn] == sequence[turn]) {
            turn++;
        }
        return turn;
    }

    /** The first turn in which it mattered when {@code task} may start. */
    int firstTurnOf(Task task) {
        return firstSeen[compiled.units.unitOf[task.index]];
    }

    /** The first turn in which it mattered in which way an order is placed, or whether it is. */
    int firstTurnOf(int order) {
        int first = NEVER_SEEN;
        for (int unit : compiled.units.unitsFor(order)) {
            first = Math.min(first, firstSeen[unit]);
            for (Task task : compiled.units.fine[unit].members()) {
                for (Link link : task.before) {
                    first = Math.min(first, firstTurnOf(link.from()));
                }
                for (Link link : task.after) {
                    first = Math.min(first, firstTurnOf(link.to()));
                }
            }
        }
        return first;
    }

    /** Takes back turn {@code turn} and all after it; a turn that was never taken changes nothing. */
    void backTo(int turn) {
        if (turn >= turnCount) {
            return;
        }
        while (rounds.get(roundCount - 1).firstTurn > turn) {
            roundCount--;
        }
        Turn then = turns[turn];
        board.journal.undoTo(then.journal);
        placer.backTo(then.broken);
        while (doneLog.size() > then.done) {
            done[doneLog.removeLast()] = false;
        }
        while (seenLog.size() > then.seen) {
            firstSeen[seenLog.removeLast()] = NEVER_SEEN;
        }
        Round round = rounds.get(roundCount - 1);
        round.next = turn - round.firstTurn;
        round.leftCount = then.left;
        turnCount = turn;
    }

    /** The turn that was taken last. */
    int turn() {
        return turnCount - 1;
    }

    /** Units that found no place in the last round. */
    int unplaced() {
        return rounds.get(roundCount - 1).leftCount;
    }

    /**
     * Goes on until all units are placed, or none of those that wait finds a place.
     *
     * @param once nothing is mended: a unit that would need a bound raised outside waits as well
     */
    Outcome run(boolean once) {
        while (true) {
            Round round = rounds.get(roundCount - 1);
            while (round.next < round.count) {
                remember(round);
                int unit = round.waiting[round.next++];
                Outcome outcome = placeWithBefore(unit);
                if (outcome == Outcome.RAISE && !once) {
                    return outcome;
                }
                if (outcome != Outcome.PLACED) {
                    if (round.leftCount == 0) {
                        round.stuck = obstacle.task;
                        round.rule = obstacle.rule;
                    }
                    round.left[round.leftCount++] = unit;
                }
            }
            if (round.leftCount == 0) {
                return Outcome.PLACED;
            }
            if (round.leftCount == round.count) {
                obstacle.task = round.stuck;
                obstacle.rule = round.rule;
                return Outcome.NEVER;
            }
            addRound(round.left, round.leftCount);
        }
    }

    private void addRound(int[] waiting, int count) {
        if (roundCount == rounds.size()) {
            rounds.add(new Round());
        }
        Round round = rounds.get(roundCount++);
        if (round.waiting.length < count) {
            round.waiting = new int[count];
            round.left = new int[count];
        }
        System.arraycopy(waiting, 0, round.waiting, 0, count);
        round.count = count;
        round.next = 0;
        round.leftCount = 0;
        round.firstTurn = turnCount;
    }

    private void remember(Round round) {
        if (turnCount == turns.length) {
            turns = Arrays.copyOf(turns, 2 * turnCount + 16);
            for (int turn = turnCount; turn < turns.length; turn++) {
                turns[turn] = new Turn();
            }
        }
        Turn turn = turns[turnCount++];
        turn.journal = board.journal.mark();
        turn.done = doneLog.size();
        turn.seen = seenLog.size();
        turn.left = round.leftCount;
        turn.broken = placer.brokenMinutes();
    }

    private void see(int unit) {
        if (firstSeen[unit] == NEVER_SEEN) {
            firstSeen[unit] = turnCount - 1;
            seenLog.add(unit);
        }
    }

    private void finish(int unit) {
        if (!done[unit]) {
            done[unit] = true;
            doneLog.add(unit);
        }
    }

    private Outcome placeWithBefore(int unit) {
        if (done[unit]) {
            return Outcome.PLACED;
        }
        see(unit);
        Task[] own = compiled.units.fine[unit].members();
        Task[] members = groups.members(unit);
        for (Task member : members) {
            see(compiled.units.unitOf[member.index]);
        }
        for (Task member : members) {
            for (Link link : member.before) {
                int before = compiled.units.unitOf[link.from().index];
                if (!done[before] && active[link.from().index] && !board.placed[link.from().index] && !isIn(members, link.from())) {
                    Outcome outcome = placeWithBefore(before);
                    if (outcome != Outcome.PLACED) {
                        return outcome;
                    }
                }
            }
        }
        Outcome outcome = placer.place(placer.open(members, active), release);
        if (outcome == Outcome.PLACED) {
            finish(unit);
            if (members != own) {
                for (Task member : members) {
                    finish(compiled.units.unitOf[member.index]);
                }
            }
        }
        return outcome;
    }

    private static boolean isIn(Task[] members, Task task) {
        for (Task member : members) {
            if (member == task) {
                return true;
            }
        }
        return false;
    }
}
