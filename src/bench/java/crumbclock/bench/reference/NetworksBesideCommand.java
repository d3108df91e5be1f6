package crumbclock.bench.reference;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Table;
import crumbclock.bench.published.Attempt;
import crumbclock.bench.published.TimeOptions;
import crumbclock.outside.Network;
import crumbclock.outside.PublishedFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Published instances solved by Crumbclock and by the exact solver in the same time. */
@Command(name = "published-exact", mixinStandardHelpOptions = true,
        description = "Published instances beside an exact solver: makespans of both, and what it proves.")
public final class NetworksBesideCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Instances: *.sm, *.SCH or *.jss.")
    private List<Path> files;

    @Mixin
    private TimeOptions time;

    @Mixin
    private RunOptions options;

    private record BesideRow(String instance, long seed, int limitSeconds, double ourEnd, double ourSeconds, String exactStatus,
            double exactEnd, double exactBound, double exactSeconds, Setting setting) {
    }

    @Override
    public Integer call() {
        List<BesideRow> rows = options.measure(options.chosen(files), this::measure);
        Table.write(options.stem("published-exact"), "Published instances beside an exact solver", rows);
        return 0;
    }

    private BesideRow measure(Path file) {
        Network network = network(file);
        Exact exact = Exact.solve(NetworkModel.of(network), time.seconds(), options.seed());
        int goal = exact.status().equals("OPTIMAL") ? (int) exact.value() : Attempt.NONE;
        Attempt ours = time.attempt(network, options.seed(), goal);
        return new BesideRow(network.name(), options.seed(), time.seconds(), ours.end() == Attempt.NONE ? Double.NaN : ours.end(),
                ours.seconds(), exact.status(), exact.value(), exact.bound(), exact.seconds(), Setting.read());
    }

    private static Network network(Path file) {
        String name = file.getFileName().toString();
        String text = PublishedFiles.text(file);
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (ending) {
            case "sm" -> PublishedFiles.project(name, text);
            case "sch" -> PublishedFiles.projectWithLags(name, text);
            case "jss" -> PublishedFiles.jobShop(name, text);
            default -> throw new IllegalArgumentException(file + ": expected a file *.sm, *.SCH or *.jss");
        };
    }
}
