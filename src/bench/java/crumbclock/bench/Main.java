package crumbclock.bench;

import crumbclock.bench.kitchen.KitchensCommand;
import crumbclock.bench.published.ProjectsCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The benchmark command: each subcommand measures one family of problems and writes its tables. */
@Command(name = "benchmark", subcommands = {ProjectsCommand.class, KitchensCommand.class}, mixinStandardHelpOptions = true,
        description = "Measures the planner and writes tables, as markdown and CSV.")
public final class Main {

    private Main() {
    }

    public static void main(String[] arguments) {
        int exitCode = new CommandLine(new Main()).execute(arguments);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }
}
