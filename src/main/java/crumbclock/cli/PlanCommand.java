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
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a plan and writes it down. */
@Command(name = PlanCommand.NAME, mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Plans a problem and writes plan.html, plan.json, timetable.csv and fridge.csv.",
            "Without --seconds and --steps it ends after 30 s, or, when no order is late, as soon as nothing has become better for 5 s.",
            "Ctrl-C ends it early and keeps the best plan so far."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time", "1:planned, but an order is late or not possible",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; a plan found before that was written"})
final class PlanCommand implements Callable<Integer> {

    static final String NAME = "plan";

    private static final int DEFAULT_SECONDS = 30;
    private static final int DEFAULT_UNIMPROVED_SECONDS = 5;
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

    @Mixin
    private SearchOptions search;

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
        long most = limits.mostMillis() == Long.MAX_VALUE ? -1 : limits.mostMillis() / MILLIS;
        try (Progress progress = Progress.of(surroundings, search.quiet(), most)) {
            plan = PlanProblem.plan(problem, limits, progress);
        }
        files.write(problem, plan);
        if (!search.quiet()) {
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
        search.check(spec);
        return search.isOpen() ? SearchLimits.ofMillis(search.seed(), DEFAULT_SECONDS * MILLIS, DEFAULT_UNIMPROVED_SECONDS * MILLIS)
                : search.limits();
    }
}
