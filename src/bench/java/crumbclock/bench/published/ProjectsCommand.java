package crumbclock.bench.published;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Stopwatch;
import crumbclock.bench.Table;
import crumbclock.domain.problem.Problem;
import crumbclock.outside.PublishedFiles;
import crumbclock.outside.PublishedProblems;
import crumbclock.search.SearchLimits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * PSPLIB's projects: how far the makespan stays above the optimum (j30) or the critical path (j60, j120) after a number
 * of schedules. Each number is a search of its own, since a search cools down by what it may use.
 */
@Command(name = "psplib", mixinStandardHelpOptions = true,
        description = "Projects of PSPLIB: mean deviation after a number of schedules.")
public final class ProjectsCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FOLDER", description = "A folder of *.sm files, its reference.csv beside it.")
    private Path folder;

    @Option(names = "--schedules", split = ",", defaultValue = "1000,5000", paramLabel = "N",
            description = "Budgets, parted by commas (default: ${DEFAULT-VALUE}).")
    private List<Long> budgets;

    @Option(names = "--minutes-per-unit", defaultValue = "1", paramLabel = "N",
            description = "Minutes that a unit of the instance's time lasts (default: ${DEFAULT-VALUE}).")
    private int minutesPerUnit;

    @Mixin
    private RunOptions options;

    /**
     * @param base             what deviations start from: "optimum" or "critical path"
     * @param schedules        the budget
     * @param meanSchedules    really generated
     * @param meanDeviation    from the base, in percent
     * @param worstDeviation   from the base, in percent
     * @param meanAboveBest    from the best makespan known, in percent
     * @param bestReached      instances in which the best makespan known was reached
     */
    private record SetRow(String set, int instances, int every, long seed, String base, long schedules, double meanSchedules,
            double meanDeviation, double worstDeviation, double meanAboveBest, long bestReached, double wallSeconds,
            double cpuSeconds, int minutesPerUnit, Setting setting) {
    }

    private record InstanceRow(String instance, long schedules, int end, int base, int bestKnown, double deviation,
            long schedulesUsed, double seconds) {
    }

    @Override
    public Integer call() {
        String set = folder.getFileName().toString();
        KnownValues known = KnownValues.read(folder.resolveSibling("reference.csv"));
        List<String> names = options.chosen(known.rows().keySet().stream()
                .filter(name -> name.matches(set + "\\d+_\\d+\\.sm")).toList());
        List<SetRow> sets = new ArrayList<>();
        List<InstanceRow> instances = new ArrayList<>();
        for (long budget : budgets) {
            System.err.println(set + ", " + names.size() + " instances, " + budget + " schedules each");
            Stopwatch watch = new Stopwatch();
            List<InstanceRow> rows = options.measure(names, name -> measure(name, known, budget));
            sets.add(row(set, rows, budget, watch));
            instances.addAll(rows);
        }
        Table.write(options.stem("psplib-" + set), "PSPLIB " + set, sets);
        Table.writeCsv(options.stem("psplib-" + set).resolveSibling(
                options.stem("psplib-" + set).getFileName() + "-instances"), instances);
        return 0;
    }

    private boolean fromOptimum() {
        return folder.endsWith("j30");
    }

    private InstanceRow measure(String name, KnownValues known, long schedules) {
        Problem problem = PublishedProblems.of(PublishedFiles.project(name, PublishedFiles.text(folder.resolve(name)))
                .inMinutes(minutesPerUnit));
        Attempt attempt = Attempt.alone(problem, minutesPerUnit, SearchLimits.ofSteps(options.seed(), schedules),
                Budget.ofSchedules(schedules));
        if (attempt.end() < known.value(name, "lower_bound")) {
            throw new IllegalStateException(name + ": a makespan of " + attempt.end() + " cannot be");
        }
        int base = known.value(name, fromOptimum() ? "best_known" : "critical_path");
        return new InstanceRow(name, schedules, attempt.end(), base, known.value(name, "best_known"),
                100.0 * (attempt.end() - base) / base, attempt.schedules(), attempt.seconds());
    }

    private SetRow row(String set, List<InstanceRow> rows, long budget, Stopwatch watch) {
        return new SetRow(set, rows.size(), options.everyKth(), options.seed(),
                fromOptimum() ? "optimum" : "critical path", budget,
                rows.stream().mapToLong(InstanceRow::schedulesUsed).average().orElse(Double.NaN),
                rows.stream().mapToDouble(InstanceRow::deviation).average().orElse(Double.NaN),
                rows.stream().mapToDouble(InstanceRow::deviation).max().orElse(Double.NaN),
                rows.stream().mapToDouble(row -> 100.0 * (row.end() - row.bestKnown()) / row.bestKnown()).average()
                        .orElse(Double.NaN),
                rows.stream().filter(row -> row.end() <= row.bestKnown()).count(), watch.wallSeconds(), watch.cpuSeconds(),
                minutesPerUnit, Setting.read());
    }
}
