package crumbclock.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How a search can be had again the same, and whether it is told how it goes. */
final class StepOptions {

    @Option(names = "--steps", paramLabel = "N",
            description = "End after N steps of search: the same steps and seed give the same plan.")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
            description = "Start of all random choices (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--quiet", description = "No progress and no summary; faults are still told.")
    private boolean quiet;

    /** @throws ParameterException when the number of steps is none */
    void check(CommandSpec command) {
        if (steps != null && steps < 1) {
            throw new ParameterException(command.commandLine(), "--steps: read " + steps + "; expected at least 1");
        }
    }

    boolean areGiven() {
        return steps != null;
    }

    /** Those given, otherwise as many as the command takes. */
    long stepsOr(long usual) {
        return steps == null ? usual : steps;
    }

    long seed() {
        return seed;
    }

    boolean quiet() {
        return quiet;
    }
}
