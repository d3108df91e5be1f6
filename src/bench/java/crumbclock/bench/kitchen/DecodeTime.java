package crumbclock.bench.kitchen;

import crumbclock.bench.Stopwatch;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How long one quick decode takes, of the order of work that a finished timetable shows. */
final class DecodeTime {

    private static final double LEAST_SECONDS = 1;

    private DecodeTime() {
    }

    /** Mean milliseconds over about a second, after as long for the compiler. */
    static double millis(Problem problem, Timetable timetable, boolean mirrored) {
        CompiledProblem compiled = CompiledProblem.of(problem, mirrored);
        Decoder decoder = new Decoder(compiled);
        int[] order = order(compiled, timetable);
        int[] ways = new int[compiled.orders.length];
        Arrays.fill(ways, mirrored ? Decoder.BUFFERED : Decoder.SPLIT);
        mean(decoder, order, ways);
        return mean(decoder, order, ways);
    }

    private static double mean(Decoder decoder, int[] order, int[] ways) {
        int[] bounds = new int[decoder.compiled().tasks.length];
        Stopwatch watch = new Stopwatch();
        int decodes = 0;
        while (watch.wallSeconds() < LEAST_SECONDS || decodes == 0) {
            decoder.decodeOnce(order, ways, bounds);
            decodes++;
        }
        return 1000 * watch.wallSeconds() / decodes;
    }

    /** Units by their first minute in the timetable, or mirrored by their last from the back. */
    private static int[] order(CompiledProblem compiled, Timetable timetable) {
        Map<String, PlacedStep> placed = timetable.steps().stream()
                .collect(Collectors.toMap(PlacedStep::stepId, step -> step, (one, other) -> one));
        return IntStream.range(0, compiled.units.fine.length).boxed()
                .sorted(Comparator.comparingInt(unit -> first(compiled, compiled.units.fine[unit], placed)))
                .mapToInt(Integer::intValue).toArray();
    }

    private static int first(CompiledProblem compiled, Unit unit, Map<String, PlacedStep> placed) {
        int first = compiled.horizon;
        for (Task task : unit.members()) {
            PlacedStep step = placed.get(task.step.id());
            if (step != null) {
                first = Math.min(first, compiled.mirrored ? compiled.horizon - step.end() : step.start());
            }
        }
        return first;
    }
}
