package crumbclock.bench;

import crumbclock.bench.kitchen.DecodesCommand;
import crumbclock.bench.kitchen.KitchensCommand;
import crumbclock.bench.published.JobShopCommand;
import crumbclock.bench.published.LagsCommand;
import crumbclock.bench.published.ProjectsCommand;
import crumbclock.bench.reference.KitchensBesideCommand;
import crumbclock.bench.reference.NetworksBesideCommand;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine.Command;
import picocli.CommandLine;

/** The benchmark command: each subcommand measures one family of problems and writes its tables. */
@Command(name = "benchmark", subcommands = {ProjectsCommand.class, LagsCommand.class, JobShopCommand.class,
        KitchensCommand.class, DecodesCommand.class, KitchensBesideCommand.class,
        NetworksBesideCommand.class}, mixinStandardHelpOptions = true,
        description = "Measures the planner and writes tables, as markdown and CSV.")
public final class Main {

    private static final Logger COUNTERS = Logger.getLogger("io.micrometer");

    private Main() {
    }

    public static void main(String[] arguments) {
        // two searches at once make a library of the solver's complain about its counters
        COUNTERS.setLevel(Level.OFF);
        int exitCode = new CommandLine(new Main()).setExecutionExceptionHandler((failed, command, parsed) -> {
            command.getErr().println("benchmark: " + failed);
            if (System.getenv("CRUMBCLOCK_TRACE") != null) {
                failed.printStackTrace();
            }
            return 1;
        }).execute(arguments);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }
}
