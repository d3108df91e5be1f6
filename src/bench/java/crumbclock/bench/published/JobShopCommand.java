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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Job shops of Fisher and Thompson, Lawrence, and Adams, Balas and Zawack. A search ends at the optimum. */
@Command(name = "jobshop", mixinStandardHelpOptions = true, description = "Job shops: gap to the optimum.")
public final class JobShopCommand implements Callable<Integer> {

    /** Lists disagree about its optimum, so a makespan below it proves nothing. */
    private static final String DISPUTED = "abz8";

    @Parameters(paramLabel = "FOLDER", description = "A folder of *.jss files with its reference.csv.")
    private Path folder;

    @Option(names = "--only", split = ",", paramLabel = "NAME", description = "Only these instances: ft10,la19.")
    private List<String> only = List.of();

    @Mixin
    private TimeOptions time;

    @Mixin
    private RunOptions options;

    private record InstanceRow(String instance, int jobs, int machines, int end, int optimum, double gap, long schedules,
            double seconds) {
    }

    private record SetRow(String set, int instances, long seed, int limitSeconds, long optimal, double meanGap, double worstGap,
            double wallSeconds, double cpuSeconds, int minutesPerUnit, Setting setting) {
    }

    @Override
    public Integer call() {
        KnownValues known = KnownValues.read(folder.resolve("reference.csv"));
        Stopwatch watch = new Stopwatch();
        List<String> names = options.chosen(known.rows().keySet().stream()
                .filter(name -> only.isEmpty() || only.contains(name)).toList());
        List<InstanceRow> rows = options.measure(names, name -> measure(name, known));
        Path stem = options.stem("jobshop");
        Table.write(stem.resolveSibling(stem.getFileName() + "-instances"), "Job shops, each", rows);
        Table.write(stem, "Job shops", List.of(new SetRow("jobshop", rows.size(), options.seed(), time.seconds(),
                rows.stream().filter(row -> row.end() == row.optimum()).count(),
                rows.stream().mapToDouble(InstanceRow::gap).average().orElse(Double.NaN),
                rows.stream().mapToDouble(InstanceRow::gap).max().orElse(Double.NaN), watch.wallSeconds(), watch.cpuSeconds(),
                time.minutesPerUnit(), Setting.read())));
        return 0;
    }

    private InstanceRow measure(String name, KnownValues known) {
        int optimum = known.value(name, "optimum");
        Attempt attempt = time.attempt(PublishedFiles.jobShop(name, PublishedFiles.text(folder.resolve(name + ".jss"))),
                options.seed(), optimum);
        if (attempt.end() < optimum && !name.equals(DISPUTED)) {
            throw new IllegalStateException(name + ": a makespan of " + attempt.end() + " cannot be");
        }
        return new InstanceRow(name, known.value(name, "jobs"), known.value(name, "machines"), attempt.end(), optimum,
                100.0 * (attempt.end() - optimum) / optimum, attempt.schedules(), attempt.seconds());
    }
}
