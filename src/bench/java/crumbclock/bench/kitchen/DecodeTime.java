package crumbclock.bench.kitchen;

import crumbclock.bench.Stopwatch;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Unit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How long one quick decode takes when orders are placed one by one, the most urgent first.
 *
 * @param millis mean of many
 * @param stuck  units that found no place
 */
record DecodeTime(double millis, int stuck) {

    private static final double LEAST_SECONDS = 1;

    /** The mean over about a second, after as long for the compiler. */
    static DecodeTime of(CompiledProblem compiled) {
        Decoder decoder = new Decoder(compiled);
        int[] order = mostUrgentFirst(compiled);
        int[] ways = new int[compiled.orders.length];
        Arrays.fill(ways, compiled.mirrored ? Decoder.BUFFERED : Decoder.SPLIT);
        mean(decoder, order, ways);
        return new DecodeTime(mean(decoder, order, ways), decoder.stuckUnits());
    }

    private static double mean(Decoder decoder, int[] order, int[] ways) {
        int[] bounds = new int[decoder.compiled().tasks.length];
        // a decode builds on what it has in common with the last one: these two differ from their first unit on
        int[] other = order.clone();
        other[0] = order[order.length - 1];
        other[order.length - 1] = order[0];
        Stopwatch watch = new Stopwatch();
        int decodes = 0;
        while (watch.wallSeconds() < LEAST_SECONDS || decodes == 0) {
            decoder.decodeOnce(decodes % 2 == 0 ? order : other, ways, bounds);
            decodes++;
        }
        return 1000 * watch.wallSeconds() / decodes;
    }

    private static int[] mostUrgentFirst(CompiledProblem compiled) {
        return IntStream.range(0, compiled.units.fine.length).boxed()
                .sorted(Comparator.comparingInt(unit -> due(compiled, compiled.units.fine[unit])))
                .mapToInt(Integer::intValue).toArray();
    }

    /** Mirrored, the last hand-over is the first. */
    private static int due(CompiledProblem compiled, Unit unit) {
        int due = compiled.horizon;
        for (int order : unit.orders().length > 0 ? unit.orders() : unit.serves()) {
            int until = compiled.orders[order].until();
            due = Math.min(due, compiled.mirrored ? compiled.horizon - until : until);
        }
        return due;
    }
}
