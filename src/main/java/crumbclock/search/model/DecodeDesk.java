package crumbclock.search.model;

import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import java.util.List;
import java.util.function.Consumer;

/**
 * Where one search has its orders of work decoded and weighed. Not thread-safe: one for each search.
 */
public final class DecodeDesk {

    private final Decoder decoder;
    private final CostMeter meter;
    private final int[] sequence;
    /** Told of every cost; the search hangs its progress and its stop on it. */
    private Consumer<Cost> watcher = cost -> {
    };

    public DecodeDesk(CompiledProblem compiled) {
        decoder = new Decoder(compiled);
        meter = new CostMeter(decoder);
        sequence = new int[compiled.units.fine.length];
    }

    public void watch(Consumer<Cost> newWatcher) {
        watcher = newWatcher;
    }

    public CompiledProblem compiled() {
        return decoder.compiled();
    }

    /** The decoder, holding the timetable of the last order of work weighed. */
    public Decoder decoder() {
        return decoder;
    }

    public Cost weigh(List<UnitRef> order) {
        for (int index = 0; index < sequence.length; index++) {
            sequence[index] = order.get(index).index();
        }
        return weigh(sequence);
    }

    public Cost weigh(int[] order) {
        decoder.decode(order);
        Cost cost = meter.measure();
        watcher.accept(cost);
        return cost;
    }
}
