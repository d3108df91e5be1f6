package crumbclock.cli;

import crumbclock.app.PlanProblem;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.change.Scenario;
import crumbclock.report.text.PlanSummary;
import crumbclock.search.SearchLimits;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a plan and writes it down. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Plans a problem and writes plan.html, plan.json, timetable.csv and fridge.csv.",
            "Without --seconds and --steps it ends after 30 s, or, when no order is late, as soon as nothing has become better for 5 s.",
            "Ctrl-C ends it early and keeps the best plan so far."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time", "1:planned, but an order is late or not possible",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; a plan found before that was written"})
final class PlanCommand implements Callable<Integer> {

    private static final int DEFAULT_SECONDS = 30;
    private static final int DEFAULT_UNIMPROVED_SECONDS = 5;
    private static final int MOST_SECONDS = 86_400;
    private static final long MILLIS = 1_000;

    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PROBLEM", description = "Problem file (JSON).")
    private Path problemFile;

    @Mixin
    private ChangeOption change;

    @Option(names = "--out", paramLabel = "DIR",
            description = "Folder to write to; otherwise reports/ and the problem's name, with that of its changes.")
    private Path out;

    @Option(names = "--seconds", paramLabel = "N", description = "Search for N seconds.")
    private Integer seconds;

    @Option(names = "--steps", paramLabel = "N",
            description = "End after N steps of search: the same steps and seed give the same plan.")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
            description = "Start of all random choices (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--quiet", description = "No progress and no summary; faults are still told.")
    private boolean quiet;

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        SearchLimits limits = limits();
        Scenario scenario = Inputs.changed(problemFile, change.changes());
        Problem problem = scenario.problem();
        boolean own = out == null && !scenario.name().isEmpty();
        PlanFiles files = PlanFiles.in(own ? PlanFiles.usual(problemFile, scenario.name()) : out, problemFile);
        surroundings.interrupt().watch();
        Plan plan;
        try (Progress progress = progress(limits)) {
            plan = PlanProblem.plan(problem, limits, progress);
        }
        files.write(problem, plan);
        if (!quiet) {
            surroundings.out().print(PlanSummary.render(problem, plan));
            surroundings.out().println();
            surroundings.out().println("Look at " + files.page() + "; tables and the plan itself are beside it.");
        }
        Exit exit = Exit.of(plan);
        if (exit == Exit.FAULT) {
            surroundings.err().println("Fault in the program: the audit found " + plan.findings().size()
                    + " broken rule" + (plan.findings().size() == 1 ? "" : "s") + " in the plan, do not work by it.");
        }
        return exit.code();
    }

    private SearchLimits limits() {
        if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
            throw new ParameterException(spec.commandLine(), "--seconds: read " + seconds + "; expected 1 to " + MOST_SECONDS);
        }
        if (steps != null && steps < 1) {
            throw new ParameterException(spec.commandLine(), "--steps: read " + steps + "; expected at least 1");
        }
        if (seconds == null && steps == null) {
            return SearchLimits.ofMillis(seed, DEFAULT_SECONDS * MILLIS, DEFAULT_UNIMPROVED_SECONDS * MILLIS);
        }
        return new SearchLimits(seed, steps == null ? Long.MAX_VALUE : steps,
                seconds == null ? Long.MAX_VALUE : seconds * MILLIS, Long.MAX_VALUE);
    }

    private Progress progress(SearchLimits limits) {
        Interrupt interrupt = surroundings.interrupt();
        if (quiet) {
            return Progress.quiet(interrupt);
        }
        boolean endless = limits.mostMillis() == Long.MAX_VALUE;
        return surroundings.terminal()
                ? new ProgressOnTerminal(surroundings.err(), interrupt, endless ? -1 : limits.mostMillis() / MILLIS)
                : new Progress(surroundings.err(), interrupt);
    }
}
