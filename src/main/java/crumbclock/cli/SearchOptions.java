package crumbclock.cli;

import crumbclock.search.SearchLimits;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How long a search takes, by the clock or by steps, with which chances, and whether it is told how it goes. */
final class SearchOptions {

    private static final int MOST_SECONDS = 86_400;
    private static final long MILLIS = 1_000;

    @Option(names = "--seconds", paramLabel = "N", description = "Search for N seconds.")
    private Integer seconds;

    @Mixin
    private StepOptions steps;

    /** @throws ParameterException when a number is out of its range */
    void check(CommandSpec command) {
        if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
            throw new ParameterException(command.commandLine(), "--seconds: read " + seconds + "; expected 1 to " + MOST_SECONDS);
        }
        steps.check(command);
    }

    /** Whether neither seconds nor steps are given: the command has an end of its own. */
    boolean isOpen() {
        return seconds == null && !steps.areGiven();
    }

    /** The limits given; none where nothing is. */
    SearchLimits limits() {
        return limits(seed());
    }

    /** The same with another seed. */
    SearchLimits limits(long otherSeed) {
        return new SearchLimits(otherSeed, steps.stepsOr(Long.MAX_VALUE), seconds == null ? Long.MAX_VALUE : seconds * MILLIS, Long.MAX_VALUE);
    }

    /** Seconds given; below 0 without. */
    int seconds() {
        return seconds == null ? -1 : seconds;
    }

    long seed() {
        return steps.seed();
    }

    boolean quiet() {
        return steps.quiet();
    }
}
