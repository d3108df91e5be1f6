package crumbclock.search.move;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.Unit;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

/**
 * An endless stream of random moves: mostly a unit shifted between what it waits for and what waits for it, now and
 * then two units exchanged, all units of one order moved, an order placed in another way, or the whole list put in
 * the order of its timetable.
 */
public class OrderMoves implements MoveIteratorFactory<WorkPlan, AbstractMove<WorkPlan>> {

    /** Of a thousand moves: units exchanged, orders moved, lists put in the order of their timetable, ways; the rest are shifts. */
    private static final int EXCHANGES = 150;
    private static final int WHOLE_ORDERS = 150;
    private static final int BY_TIME = 15;
    private static final int WAYS = 60;
    /** Half of the shifts go no further than this. */
    private static final int NEAR = 5;

    @Override
    public long getSize(ScoreDirector<WorkPlan> director) {
        long units = director.getWorkingSolution().getUnits().size();
        return units * units;
    }

    @Override
    public Iterator<AbstractMove<WorkPlan>> createOriginalMoveIterator(ScoreDirector<WorkPlan> director) {
        throw new UnsupportedOperationException("only random moves");
    }

    @Override
    public Iterator<AbstractMove<WorkPlan>> createRandomMoveIterator(ScoreDirector<WorkPlan> director, Random random) {
        return new Moves(director.getWorkingSolution(), random);
    }

    private static final class Moves implements Iterator<AbstractMove<WorkPlan>> {
        private final WorkPlan plan;
        private final Random random;
        private final Unit[] units;
        private final int[] position;
        private final List<List<Integer>> after;

        Moves(WorkPlan plan, Random random) {
            this.plan = plan;
            this.random = random;
            units = plan.getDesk().compiled().units.fine;
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
            int kind = random.nextInt(1000);
            if ((kind -= BY_TIME) < 0) {
                return byTime(sequence);
            }
            if ((kind -= WAYS) < 0) {
                return way(sequence);
            }
            if ((kind -= WHOLE_ORDERS) < 0) {
                return wholeOrder(sequence);
            }
            return kind < EXCHANGES ? exchange(sequence) : shift(sequence);
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

        /**
         * Moves the units of one order, half of the time with its shared batches and the orders that share them;
         * mostly an order that found no place, when there is one.
         */
        private ReorderMove wholeOrder(List<UnitRef> sequence) {
            int order = pickOrder();
            boolean[] chosen = new boolean[units.length];
            boolean withBatches = random.nextBoolean();
            for (Unit unit : units) {
                chosen[unit.index()] = withBatches ? unit.isFor(order) : belongs(unit, order);
            }
            if (withBatches) {
                addSharers(order, chosen);
            }
            return random.nextBoolean() ? together(sequence, chosen) : spread(sequence, chosen);
        }

        private int pickOrder() {
            Decoder decoder = plan.getDesk().decoder();
            int orders = plan.getDesk().compiled().orders.length;
            int order = random.nextInt(orders);
            if (random.nextInt(4) > 0) {
                for (int step = 0; step < orders; step++) {
                    int candidate = (order + step) % orders;
                    if (!decoder.isPossible(candidate) && plan.getWays().get(candidate).getWay() != Decoder.LEFT_OUT) {
                        return candidate;
                    }
                }
            }
            return order;
        }

        /** Adds the units of all orders that use a batch with {@code order}. */
        private void addSharers(int order, boolean[] chosen) {
            for (Unit batch : units) {
                if (batch.isFor(order) && !belongs(batch, order)) {
                    for (int sharer : batch.serves()) {
                        for (int index : plan.getDesk().compiled().units.unitsOfOrder[sharer]) {
                            chosen[index] = true;
                        }
                    }
                }
            }
        }

        /** Puts the chosen units in again at one place, in the same order among themselves; often right in front. */
        private ReorderMove together(List<UnitRef> sequence, boolean[] chosen) {
            List<UnitRef> taken = new ArrayList<>();
            List<UnitRef> rest = new ArrayList<>();
            for (UnitRef ref : sequence) {
                (chosen[ref.index()] ? taken : rest).add(ref);
            }
            rest.addAll(random.nextInt(3) == 0 ? 0 : random.nextInt(rest.size() + 1), taken);
            return new ReorderMove(0, rest);
        }

        /** Moves the chosen units all earlier or all later, spread as before. */
        private ReorderMove spread(List<UnitRef> sequence, boolean[] chosen) {
            int by = 1 + random.nextInt(Math.max(1, units.length / 2));
            int direction = random.nextBoolean() ? by : -by;
            List<UnitRef> moved = new ArrayList<>(sequence);
            int[] key = new int[units.length];
            for (int index = 0; index < units.length; index++) {
                UnitRef ref = sequence.get(index);
                key[ref.index()] = 2 * index + (chosen[ref.index()] ? 2 * direction + (direction > 0 ? 1 : -1) : 0);
            }
            moved.sort(Comparator.comparingInt(ref -> key[ref.index()]));
            return new ReorderMove(0, moved);
        }

        private static boolean belongs(Unit unit, int order) {
            return Arrays.binarySearch(unit.orders(), order) >= 0;
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
}
