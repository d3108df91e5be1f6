package crumbclock.bound;

import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.problem.Weights;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.List;

/**
 * The least that lateness costs when certain orders are all made: what each costs by itself, and what comes on top
 * because they share the kitchen.
 */
final class Lateness {

    private final CompiledProblem compiled;
    private final List<Integer> made;
    private final Proof proof;
    private final long[] perMinute;
    private final long perOrder;
    private final long[] alone;
    private final boolean together;

    private Lateness(CompiledProblem compiled, List<OrderBound> bounds, List<Integer> made, Proof proof, long[] perMinute,
            long perOrder) {
        this.compiled = compiled;
        this.made = made;
        this.proof = proof;
        this.perMinute = perMinute;
        this.perOrder = perOrder;
        alone = new long[perMinute.length];
        for (int order : made) {
            alone[order] = cost(order, bounds.get(order).lateMinutes());
        }
        together = !proof.isContradicted(new HandOvers(compiled, proof.net.horizon));
    }

    /** In points, as the weights have them. */
    static Lateness points(CompiledProblem compiled, List<OrderBound> bounds, List<Integer> made, Proof proof) {
        Weights weights = compiled.problem.weights();
        long[] perMinute = Arrays.stream(compiled.orders)
                .mapToLong(order -> (long) order.importance() * weights.lateMinute()).toArray();
        return new Lateness(compiled, bounds, made, proof, perMinute, weights.lateOrder());
    }

    /** In minutes, whatever the importance. */
    static Lateness minutes(CompiledProblem compiled, List<OrderBound> bounds, List<Integer> made, Proof proof) {
        long[] perMinute = new long[compiled.orders.length];
        Arrays.fill(perMinute, 1);
        return new Lateness(compiled, bounds, made, proof, perMinute, 0);
    }

    /** False when it is proven that these orders cannot all be made. */
    boolean areTogetherPossible() {
        return together;
    }

    /** What the lateness of one order costs at least. */
    long alone(int order) {
        return alone[order];
    }

    /** What the lateness of all costs at least; without meaning when they are not possible together. */
    long least() {
        long sum = Arrays.stream(alone).sum();
        if (!together) {
            return sum;
        }
        long low = 0;
        long high = 0;
        for (int order : made) {
            int most = Math.max(0, proof.net.horizon + compiled.orders[order].offset() - compiled.orders[order].until());
            high = Math.max(high, cost(order, most) - alone[order] + 1);
        }
        // were all together cheaper than the sum and this much more, then no single order could cost it either
        long next = Math.min(1, high);
        while (low < high && isContradicted(next)) {
            low = next;
            next = Math.min(high, 2 * next);
            if (low == high) {
                return sum + high;
            }
        }
        high = Math.min(high, Math.max(low, next - 1));
        while (low < high) {
            long middle = (low + high + 1) >>> 1;
            if (isContradicted(middle)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return sum + low;
    }

    private boolean isContradicted(long more) {
        HandOvers limits = new HandOvers(compiled, proof.net.horizon);
        for (int order : made) {
            limits.until(order, mostMinutes(order, alone[order] + more - 1));
        }
        return proof.isContradicted(limits);
    }

    private long cost(int order, int minutes) {
        return minutes == 0 ? 0 : perMinute[order] * minutes + perOrder;
    }

    /** How late an order may be for so much. */
    private int mostMinutes(int order, long points) {
        if (points < perOrder) {
            return 0;
        }
        return perMinute[order] == 0 ? Room.NEVER : (int) Math.min(Room.NEVER, (points - perOrder) / perMinute[order]);
    }

    /** By when orders have to be handed over. */
    static final class HandOvers implements Proof.Limits {

        private final CompiledProblem compiled;
        private final int[] latestStart;
        private final int[] latestEnd;

        HandOvers(CompiledProblem compiled, int horizon) {
            this.compiled = compiled;
            latestStart = new int[compiled.tasks.length];
            latestEnd = new int[compiled.tasks.length];
            Arrays.fill(latestStart, horizon);
            Arrays.fill(latestEnd, horizon);
        }

        void until(int index, int lateMinutes) {
            CompiledOrder order = compiled.orders[index];
            if (order.handOver() != null) {
                int door = order.handOver().index;
                latestStart[door] = Math.min(latestStart[door], order.latestStart() + lateMinutes);
                return;
            }
            for (Task finish : order.finishes()) {
                latestEnd[finish.index] = Math.min(latestEnd[finish.index], order.until() + lateMinutes);
            }
        }

        @Override
        public int latestStart(int task) {
            return latestStart[task];
        }

        @Override
        public int latestEnd(int task) {
            return latestEnd[task];
        }
    }
}
