package crumbclock.bench.kitchen;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Stopwatch;
import crumbclock.bench.Table;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** How long reading, compiling and one decode take, without any search, and how they grow with the kitchen. */
@Command(name = "decodes", mixinStandardHelpOptions = true,
        description = "Time of one decode of each kitchen, and how it grows from the first to the last.")
public final class DecodesCommand implements Callable<Integer> {

    @Mixin
    private ShopOptions shops;

    @Mixin
    private RunOptions options;

    private record DecodeRow(String kitchen, long seed, int orders, int steps, int units, int people, int horizonMinutes,
            double readSeconds, double compileSeconds, double forwardMillis, int forwardStuck, double backwardMillis,
            int backwardStuck, Setting setting) {
    }

    @Override
    public Integer call() {
        List<DecodeRow> rows = options.measure(shops.problems(options.seed()), this::measure);
        Table.write(options.stem("decodes"), "Decodes" + growth(rows.get(0), rows.get(rows.size() - 1)), rows);
        return 0;
    }

    private DecodeRow measure(Path file) {
        Stopwatch reading = new Stopwatch();
        Problem problem = MadeUpShop.read(file);
        double readSeconds = reading.wallSeconds();
        Stopwatch compiling = new Stopwatch();
        CompiledProblem forward = CompiledProblem.of(problem, false);
        CompiledProblem backward = CompiledProblem.of(problem, true);
        double compileSeconds = compiling.wallSeconds();
        DecodeTime forwardTime = DecodeTime.of(forward);
        DecodeTime backwardTime = DecodeTime.of(backward);
        return new DecodeRow(problem.title(), options.seed(), problem.orders().size(), problem.steps().size(),
                forward.units.fine.length, problem.kitchen().people().size(), problem.clock().horizonMinutes(), readSeconds,
                compileSeconds, forwardTime.millis(), forwardTime.stuck(), backwardTime.millis(), backwardTime.stuck(),
                Setting.read());
    }

    /** 1 for as much as the steps grow, 2 for their square. */
    private static String growth(DecodeRow small, DecodeRow large) {
        double steps = Math.log((double) large.steps / small.steps);
        return steps == 0 ? "" : String.format(Locale.ROOT,
                "; from the first to the last they grow with steps to the power %.2f forward, %.2f backward",
                Math.log(large.forwardMillis / small.forwardMillis) / steps,
                Math.log(large.backwardMillis / small.backwardMillis) / steps);
    }
}
