package crumbclock.search.move;

import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Unit;
import crumbclock.search.model.Tactics;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkPlan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

/**
 * An endless stream of random moves, mixed as the {@link Tactics} say: a unit shifted between what it waits for and what
 * waits for it, two units exchanged, all units of one order moved, an order placed in another way, the whole list put in the order of its
 * timetable, or of a timetable pushed back and forth, and units of the chain that holds up the end put past each other.
 */
final class MoveStream implements Iterator<AbstractMove<WorkPlan>> {

    /** Half of the shifts go no further than this. */
    private static final int NEAR = 5;

    private final WorkPlan plan;
    private final Random random;
    private final Tactics.Moves mix;
    private final WholeOrders wholeOrders;
    private final Chains chains;
    /** The order of work whose timetable {@link #chains} knows. */
    private final int[] known;
    private final Unit[] units;
    private final int[] position;
    private final List<List<Integer>> after;

    MoveStream(WorkPlan plan, Random random) {
        this.plan = plan;
        this.random = random;
        CompiledProblem compiled = plan.getDesk().compiled();
        mix = Tactics.of(compiled).moves();
        wholeOrders = new WholeOrders(plan, random);
        chains = new Chains(compiled);
        units = compiled.units.fine;
        known = new int[units.length];
        position = new int[units.length];
        after = new ArrayList<>();
        for (int unit = 0; unit < units.length; unit++) {
            after.add(new ArrayList<>());
        }
        for (Unit unit : units) {
            for (int before : unit.before()) {
                after.get(before).add(unit.index());
            }
        }
    }

    @Override
    public boolean hasNext() {
        return units.length > 1;
    }

    @Override
    public AbstractMove<WorkPlan> next() {
        List<UnitRef> sequence = plan.getOrder().getSequence();
        for (int index = 0; index < units.length; index++) {
            position[sequence.get(index).index()] = index;
        }
        int kind = random.nextInt(Tactics.Moves.OF);
        if (mix.justified() + mix.chained() > 0) {
            keepUp(sequence);
        }
        if ((kind -= mix.justified()) < 0) {
            return justified(sequence);
        }
        if ((kind -= mix.chained()) < 0 && chains.find(random) && position[chains.first()] < position[chains.second()]) {
            return pastEachOther(sequence, position[chains.first()], position[chains.second()]);
        }
        if ((kind -= mix.byTime()) < 0) {
            return byTime(sequence);
        }
        if ((kind -= mix.ways()) < 0) {
            return way(sequence);
        }
        if ((kind -= mix.wholeOrders()) < 0) {
            return wholeOrders.move(sequence);
        }
        return kind < mix.exchanges() ? exchange(sequence) : shift(sequence);
    }

    /** The decoder holds the timetable of the move before; where that was taken, it is the present one. */
    private void keepUp(List<UnitRef> sequence) {
        boolean taken = false;
        for (int index = 0; index < known.length; index++) {
            int unit = sequence.get(index).index();
            taken |= known[index] != unit;
            known[index] = unit;
        }
        if (taken) {
            chains.read(plan.getDesk().decoder());
        }
    }

    private ReorderMove justified(List<UnitRef> sequence) {
        List<UnitRef> to = new ArrayList<>();
        for (int unit : plan.getDesk().justified(chains.ends())) {
            to.add(sequence.get(position[unit]));
        }
        return new ReorderMove(0, to);
    }

    /** What waits comes right before what it waits for, or what it waits for comes right behind it. */
    private ReorderMove pastEachOther(List<UnitRef> sequence, int blocker, int blocked) {
        return random.nextBoolean() ? move(sequence, blocked, blocker) : move(sequence, blocker, blocked);
    }

    /** Another way for one order that is placed at all; a buffer is kept free backward only. */
    private AbstractMove<WorkPlan> way(List<UnitRef> sequence) {
        int order = random.nextInt(plan.getWays().size());
        if (plan.getWays().get(order).getWay() == Decoder.LEFT_OUT) {
            return shift(sequence);
        }
        boolean backward = plan.getDesk().compiled().mirrored;
        return new WayMove(order, backward ? random.nextInt(Decoder.LEFT_OUT) : Decoder.SPLIT + random.nextInt(2));
    }

    private ReorderMove shift(List<UnitRef> sequence) {
        int at = random.nextInt(units.length);
        Unit unit = units[sequence.get(at).index()];
        int first = 0;
        int last = units.length - 1;
        for (int before : unit.before()) {
            first = Math.max(first, position[before] + 1);
        }
        for (int later : after.get(unit.index())) {
            last = Math.min(last, position[later] - 1);
        }
        first = Math.min(first, at);
        last = Math.max(last, at);
        if (random.nextBoolean()) {
            first = Math.max(first, at - NEAR);
            last = Math.min(last, at + NEAR);
        }
        return move(sequence, at, first + random.nextInt(last - first + 1));
    }

    private ReorderMove move(List<UnitRef> sequence, int at, int to) {
        int from = Math.min(at, to);
        List<UnitRef> stretch = new ArrayList<>(sequence.subList(from, Math.max(at, to) + 1));
        Collections.rotate(stretch, at < to ? -1 : 1);
        return new ReorderMove(from, stretch);
    }

    private ReorderMove exchange(List<UnitRef> sequence) {
        int at = random.nextInt(units.length);
        int to = random.nextInt(units.length);
        int from = Math.min(at, to);
        List<UnitRef> stretch = new ArrayList<>(sequence.subList(from, Math.max(at, to) + 1));
        Collections.swap(stretch, 0, stretch.size() - 1);
        return new ReorderMove(from, stretch);
    }

    /** The order in which the timetable of this very list begins its units; the list may then be improved where it was ignored. */
    private ReorderMove byTime(List<UnitRef> sequence) {
        Decoder decoder = plan.getDesk().decoder();
        plan.getDesk().weigh(plan);
        int[] start = decoder.unitStarts();
        List<UnitRef> sorted = new ArrayList<>(sequence);
        sorted.sort(Comparator.comparingInt(ref -> start[ref.index()]));
        return new ReorderMove(0, sorted);
    }

    @Override
    public void remove() {
        throw new UnsupportedOperationException("moves come and go by themselves");
    }
}
