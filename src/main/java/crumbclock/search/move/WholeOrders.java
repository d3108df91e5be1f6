package crumbclock.search.move;

import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.Unit;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** Moves of all units of one order at once. */
final class WholeOrders {

    private final WorkPlan plan;
    private final Random random;
    private final Unit[] units;

    WholeOrders(WorkPlan plan, Random random) {
        this.plan = plan;
        this.random = random;
        units = plan.getDesk().compiled().units.fine;
    }

    /**
     * Moves the units of one order, half of the time with its shared batches and the orders that share them;
     * mostly an order that found no place, when there is one.
     */
    ReorderMove move(List<UnitRef> sequence) {
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
}
