package crumbclock.bench.published;

import crumbclock.domain.problem.Problem;
import crumbclock.outside.Network;
import crumbclock.outside.PublishedProblems;
import crumbclock.search.SearchLimits;
import picocli.CommandLine.Option;

/** How long a search may take for an instance, and how the instance's time becomes minutes. */
public final class TimeOptions {

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "10",
            description = "Most seconds for each instance (default: ${DEFAULT-VALUE}).")
    private int seconds;

    @Option(names = "--minutes-per-unit", defaultValue = "60", paramLabel = "N",
            description = "Minutes that a unit of the instance's time lasts (default: ${DEFAULT-VALUE}).")
    private int minutesPerUnit;

    public int seconds() {
        return seconds;
    }

    int minutesPerUnit() {
        return minutesPerUnit;
    }

    /** Searches until the time is up or the makespan reaches {@code goal}; a goal below 0 is never reached. */
    public Attempt attempt(Network network, long seed, int goal) {
        Problem problem = PublishedProblems.of(network.inMinutes(minutesPerUnit));
        Budget budget = Budget.ofSeconds(seconds, goal < 0 ? Long.MIN_VALUE : (long) goal * minutesPerUnit);
        return Attempt.within(problem, minutesPerUnit, SearchLimits.ofMillis(seed, 1000L * seconds, Long.MAX_VALUE), budget);
    }
}
