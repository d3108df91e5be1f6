package crumbclock.search.model;

import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import java.util.List;

/**
 * Where one search has its orders of work decoded and weighed. Not thread-safe: one for each search.
 */
public final class DecodeDesk {

    private final Decoder decoder;
    private final CostMeter meter;
    private final int[] sequence;
    /** How orders are placed in quick decodes. */
    private int[] stages;
    private Runnable watcher = () -> {
    };

    /**
     * A quick decode's answer.
     *
     * @param breaks 0 for a sound timetable; else how much did not work out
     */
    public record Weight(long breaks, Cost cost) {
    }

    public DecodeDesk(CompiledProblem compiled) {
        decoder = new Decoder(compiled);
        meter = new CostMeter(decoder);
        sequence = new int[compiled.units.fine.length];
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
    public Cost again(int[] order, int[] orderStages) {
        decoder.decodeOnce(order, orderStages);
        return meter.measure();
    }

    /** From now on quick decodes place orders in this way. */
    public void place(int[] newStages) {
        stages = newStages.clone();
    }

    public Weight weigh(List<UnitRef> order) {
        watcher.run();
        for (int index = 0; index < sequence.length; index++) {
            sequence[index] = order.get(index).index();
        }
        decoder.decodeOnce(sequence, stages);
        return new Weight(decoder.breaks(), meter.measure());
    }
}
