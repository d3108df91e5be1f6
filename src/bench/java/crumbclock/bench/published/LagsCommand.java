package crumbclock.bench.published;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Stopwatch;
import crumbclock.bench.Table;
import crumbclock.outside.PublishedFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** RCPSP/max: projects with least and most lags, some without any solution. A search ends at the best value known. */
@Command(name = "rcpspmax", mixinStandardHelpOptions = true,
        description = "Projects with least and most lags: share solved, deviation from the best known.")
public final class LagsCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FOLDER", description = "A folder of *.SCH files with its bounds.csv.")
    private Path folder;

    @Mixin
    private TimeOptions time;

    @Mixin
    private RunOptions options;

    /**
     * @param feasible       instances that are known to have a solution, or not known to have none
     * @param solved         feasible ones for which a sound plan was found
     * @param solvedShare    in percent of the feasible ones
     * @param falsePlans     plans of instances that are known to have none: must be 0
     * @param meanDeviation  from the best known, of the solved ones, in percent
     * @param bestReached    solved ones as good as the best known
     */
    private record SetRow(String set, int instances, int every, long seed, int limitSeconds, long feasible, long solved,
            double solvedShare, long infeasible, long falsePlans, double meanDeviation, double worstDeviation, long bestReached,
            double wallSeconds, double cpuSeconds, int minutesPerUnit, Setting setting) {
    }

    private record InstanceRow(String instance, String status, int end, int bestKnown, double deviation, long schedules,
            double seconds) {

        boolean isFeasible() {
            return !status.equals("infeasible");
        }

        boolean isSolved() {
            return end != Attempt.NONE;
        }
    }

    @Override
    public Integer call() {
        String set = folder.getFileName().toString();
        KnownValues known = KnownValues.read(folder.resolve("bounds.csv"));
        Stopwatch watch = new Stopwatch();
        List<InstanceRow> rows = options.measure(options.chosen(List.copyOf(known.rows().keySet())), name -> measure(name, known));
        Path stem = options.stem("rcpspmax-" + set);
        Table.write(stem, "RCPSP/max " + set, List.of(row(set, rows, watch)));
        Table.writeCsv(stem.resolveSibling(stem.getFileName() + "-instances"), rows);
        return 0;
    }

    private InstanceRow measure(String name, KnownValues known) {
        int best = known.value(name, "upper_bound");
        Attempt attempt = time.attempt(PublishedFiles.projectWithLags(name, PublishedFiles.text(folder.resolve(name))),
                options.seed(), best);
        if (attempt.end() != Attempt.NONE && attempt.end() < known.value(name, "lower_bound")) {
            throw new IllegalStateException(name + ": a makespan of " + attempt.end() + " cannot be");
        }
        double deviation = attempt.end() == Attempt.NONE || best == Attempt.NONE ? Double.NaN
                : 100.0 * (attempt.end() - best) / best;
        return new InstanceRow(name, known.text(name, "status"), attempt.end(), best, deviation, attempt.schedules(),
                attempt.seconds());
    }

    private SetRow row(String set, List<InstanceRow> rows, Stopwatch watch) {
        List<InstanceRow> feasible = rows.stream().filter(InstanceRow::isFeasible).toList();
        List<InstanceRow> solved = feasible.stream().filter(InstanceRow::isSolved).toList();
        long infeasible = rows.size() - feasible.size();
        long falsePlans = rows.stream().filter(row -> !row.isFeasible() && row.isSolved()).count();
        return new SetRow(set, rows.size(), options.everyKth(), options.seed(), time.seconds(), feasible.size(), solved.size(),
                100.0 * solved.size() / feasible.size(), infeasible, falsePlans,
                solved.stream().mapToDouble(InstanceRow::deviation).average().orElse(Double.NaN),
                solved.stream().mapToDouble(InstanceRow::deviation).max().orElse(Double.NaN),
                solved.stream().filter(row -> row.end() <= row.bestKnown()).count(), watch.wallSeconds(), watch.cpuSeconds(),
                time.minutesPerUnit(), Setting.read());
    }
}
