package crumbclock.search.model;

import crumbclock.domain.problem.Weights;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import java.util.List;

/**
 * Where one search has its orders of work decoded and weighed. Not thread-safe: one for each search.
 */
public final class DecodeDesk {

    private final Decoder decoder;
    private final CostMeter meter;
    private final int[] sequence;
    private final int[] ways;
    /** Bounds on tasks that quick decodes keep. */
    private int[] bounds;
    private Runnable watcher = () -> {
    };

    /** Soft points for each unit that found no place, so that fewer of them are better. */
    private static final int STUCK_UNIT = 300;

    /**
     * A quick decode's answer.
     *
     * @param breaks 0 for a timetable that breaks no bound; else by how many minutes it does
     * @param cost   with orders that found no place counted as very late
     */
    public record Weight(long breaks, Cost cost) implements Comparable<Weight> {

        @Override
        public int compareTo(Weight other) {
            return breaks != other.breaks ? Long.compare(breaks, other.breaks) : cost.compareTo(other.cost);
        }
    }

    public DecodeDesk(CompiledProblem compiled) {
        decoder = new Decoder(compiled);
        meter = new CostMeter(decoder);
        sequence = new int[compiled.units.fine.length];
        ways = new int[compiled.orders.length];
        bounds = new int[compiled.tasks.length];
    }

    /** Sets what is run before every quick decode: the search hangs its stop on it. */
    public void watch(Runnable newWatcher) {
        watcher = newWatcher;
    }

    public CompiledProblem compiled() {
        return decoder.compiled();
    }

    /** The decoder, holding the timetable of the last order of work weighed. */
    public Decoder decoder() {
        return decoder;
    }

    /** Decodes with everything mended; the timetable is sound, and its cost true. */
    public Cost mend(int[] order) {
        decoder.decode(order);
        return meter.measure();
    }

    /** Decodes once more what a quick decode found sound. */
    public Cost again(int[] order, int[] orderWays, int[] taskBounds) {
        decoder.decodeOnce(order, orderWays, taskBounds);
        return meter.measure();
    }

    /** Whether the last order of work weighed has a sound timetable, with every order in it that was to be placed. */
    public boolean isSound() {
        return decoder.brokenMinutes() == 0 && decoder.stuckUnits() == 0;
    }

    /** Whether one order can be made when it has the kitchen to itself, in this direction. */
    public boolean isPossibleAlone(int[] order, int only) {
        boolean[] wanted = new boolean[compiled().orders.length];
        wanted[only] = true;
        decoder.decode(order, wanted);
        return decoder.isPossible(only);
    }

    /**
     * An order that found no place weighs as if it were very late, not as if it were not possible: else the search would never
     * put off one order to make room for another.
     */
    private long stuckRelief() {
        Weights weights = compiled().problem.weights();
        long late = (long) weights.lateMinute() * Math.max(120, compiled().horizon / 6);
        long relief = 0;
        for (CompiledOrder order : compiled().orders) {
            if (decoder.isStuck(order.index())) {
                relief += Math.max(0, weights.notPossible() - late) * order.importance();
            }
        }
        return relief;
    }

    /** From now on quick decodes keep these bounds. */
    public void bound(int[] newBounds) {
        bounds = newBounds.clone();
    }

    public Weight weigh(WorkPlan plan) {
        watcher.run();
        List<UnitRef> order = plan.getOrder().getSequence();
        for (int index = 0; index < sequence.length; index++) {
            sequence[index] = order.get(index).index();
        }
        for (OrderWay choice : plan.getWays()) {
            ways[choice.getOrder()] = choice.getWay();
        }
        return weigh(sequence, ways);
    }

    /** A quick decode of an order of work, with orders placed in the given ways. */
    public Weight weigh(int[] order, int[] orderWays) {
        decoder.decodeOnce(order, orderWays, bounds);
        Cost cost = meter.measure();
        return new Weight(decoder.brokenMinutes(), new Cost(cost.medium() - stuckRelief(),
                cost.soft() + (long) STUCK_UNIT * decoder.stuckUnits()));
    }
}
