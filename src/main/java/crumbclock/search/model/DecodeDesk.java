package crumbclock.search.model;

import crumbclock.domain.problem.Weights;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Where one search has its orders of work decoded and weighed. Not thread-safe: one for each search.
 *
 * <p>A search of a single project weighs more finely than it costs: of two timetables that end at the same minute the one whose
 * steps end earlier in the mean is lighter, since it is nearer to ending earlier as a whole.
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

    private final int fineness;
    private final int[] taskStarts;
    private final int[] taskEnds;
    /** For the other direction; made when it is first asked for. */
    private Decoder counterpart;

    /** Weighs in points of cost. */
    public DecodeDesk(CompiledProblem compiled) {
        this(compiled, 1);
    }

    /** @param fineness points of weight for one point of cost */
    public DecodeDesk(CompiledProblem compiled, int fineness) {
        this.fineness = fineness;
        decoder = new Decoder(compiled);
        meter = new CostMeter(decoder);
        sequence = new int[compiled.units.fine.length];
        ways = new int[compiled.orders.length];
        bounds = new int[compiled.tasks.length];
        taskStarts = new int[compiled.tasks.length];
        taskEnds = new int[compiled.tasks.length];
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

    /** The same; empty when it was given up. */
    public Optional<Cost> mend(int[] order, BooleanSupplier giveUp) {
        return decoder.decode(order, giveUp) ? Optional.of(meter.measure()) : Optional.empty();
    }

    /** Timetables made, in both directions. */
    public long schedules() {
        return decoder.schedules() + (counterpart == null ? 0 : counterpart.schedules());
    }

    /**
     * Forward-backward improvement (Li and Willis 1992; Tormos and Lova 2001): all steps pushed as far back as they go, in the
     * order of their ends, and then forward again, in the order of their new starts.
     *
     * @param ends of a timetable with all tasks in it, abstract, by task
     * @return an order of work for this direction
     */
    public int[] justified(int[] ends) {
        if (counterpart == null) {
            counterpart = new Decoder(CompiledProblem.of(compiled().problem, !compiled().mirrored));
        }
        watcher.run();
        int[] starts = new int[ends.length];
        int[] newEnds = new int[ends.length];
        int[] free = new int[compiled().orders.length];
        Arrays.fill(free, Decoder.SPLIT);
        counterpart.decodeOnce(byEnds(counterpart.compiled(), ends), free, new int[ends.length]);
        counterpart.copyTimes(starts, newEnds);
        return byEnds(compiled(), newEnds);
    }

    /** Units in the order in which they start, seen from where the other direction ends. */
    private static int[] byEnds(CompiledProblem compiled, int[] endsInOther) {
        int count = compiled.units.fine.length;
        long[] keys = new long[count];
        for (int unit = 0; unit < count; unit++) {
            int first = compiled.horizon;
            for (Task task : compiled.units.fine[unit].members()) {
                if (endsInOther[task.index] >= 0) {
                    first = Math.min(first, compiled.horizon - endsInOther[task.index]);
                }
            }
            keys[unit] = (long) first << Integer.SIZE | unit;
        }
        Arrays.sort(keys);
        int[] order = new int[count];
        Arrays.setAll(order, at -> (int) keys[at]);
        return order;
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
                fineness * (cost.soft() + (long) STUCK_UNIT * decoder.stuckUnits()) + meanEnd()));
    }

    /** 0 to {@link #fineness} − 1: when steps end in the mean, as a share of when the last one does. */
    private long meanEnd() {
        if (fineness == 1) {
            return 0;
        }
        decoder.copyTimes(taskStarts, taskEnds);
        long sum = 0;
        int last = 1;
        for (int end : taskEnds) {
            sum += end;
            last = Math.max(last, end);
        }
        return fineness * Math.max(0, sum) / ((long) taskEnds.length * last + 1);
    }
}
