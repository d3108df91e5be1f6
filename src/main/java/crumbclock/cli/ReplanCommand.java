package crumbclock.cli;

import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.engine.cost.Cost;
import crumbclock.report.text.NewsText;
import crumbclock.report.text.PlanSummary;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans again while the day runs, and writes what is different. */
@Command(name = ReplanCommand.NAME, mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Plans again from now on, with what has happened, and changes as little of the known plan as it must.",
            "Writes the same files as plan, into another folder than the known plan's, and keeps each plan in its history.",
            "Without --seconds and --steps it ends after as many steps as take a few seconds."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time",
            "1:planned, but an order is late or not possible, or what happened has broken a rule",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; a plan found before that was written"})
final class ReplanCommand implements Callable<Integer> {

    static final String NAME = "replan";

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE-HHmm", Locale.ENGLISH);
    private static final long NANOS = 1_000_000_000L;
    /** Timetables that are made × steps of the problem: a second for a handful of cakes, a few for dozens. */
    private static final long EFFORT = 250_000;
    private static final long LARGE_EFFORT = 2_400_000;
    private static final int LARGE = 200;

    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PROBLEM", description = "Problem file (JSON) that the known plan was made of.")
    private Path problemFile;

    @Mixin
    private ChangeOption change;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "The plan.json that people work by.")
    private Path planFile;

    @Option(names = "--day", required = true, paramLabel = "FILE",
            description = "What happened, a line each: time, cake, step, word (see formats-day.md).")
    private Path dayFile;

    @Option(names = "--now", required = true, paramLabel = "TIME", description = "When it is now, such as 11:00 or \"Sat 11:00\".")
    private String now;

    @Option(names = "--reason", paramLabel = "TEXT", defaultValue = "", description = "Why, for the history; otherwise the day file's name.")
    private String reason;

    @Option(names = "--out", paramLabel = "DIR",
            description = "Folder to write to; otherwise reports/, the problem's name and the time of now.")
    private Path out;

    @Mixin
    private SearchOptions search;

    ReplanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        search.check(spec);
        Problem problem = Inputs.changed(problemFile, change.changes()).problem();
        if (!search.isOpen() || problem.steps().size() > LARGE) {
            ShortRun.compileWell();
        }
        int minute = Inputs.now(now, problem.clock(), spec);
        KnownPlan known = Inputs.known(planFile, problem);
        DayLog log = Inputs.day(dayFile, known.problem(), minute);
        PlanFiles files = PlanFiles.in(out == null ? usualFolder(problemFile, problem.clock(), minute) : out, problemFile);
        refuseToOverwrite(files);
        PlanHistory history = PlanHistory.of(planFile);
        surroundings.interrupt().watch();
        Replanned made;
        try (Progress progress = Progress.of(surroundings, search.quiet(), search.seconds())) {
            made = Replan.replan(known.problem(), known.plan(), known.state(), log, minute, limits(problem), untilTimeIsUp(progress));
        }
        String plan = files.write(made.problem(), made.plan(), made.news(), made.state());
        history.add(now, reason.isEmpty() ? dayFile.getFileName().toString() : reason, plan);
        history.write(files.folder());
        if (!search.quiet()) {
            surroundings.out().print(NewsText.render(made.problem(), made.plan(), made.news()));
            surroundings.out().print(PlanSummary.render(made.problem(), made.plan(), made.news().inFact()));
            surroundings.out().println();
            surroundings.out().println("Look at " + files.page() + "; tables and the plan itself are beside it.");
        }
        return exit(made).code();
    }

    /** Named after the time of the clock, with its day: two plans of one weekend go to two folders. */
    static Path usualFolder(Path problemFile, ProblemClock clock, int minute) {
        return PlanFiles.usual(problemFile, TIME.format(clock.at(minute)).toLowerCase(Locale.ROOT));
    }

    /** The plan that people work by stays what it was. */
    private void refuseToOverwrite(PlanFiles files) {
        Path there = planFile.toAbsolutePath().normalize().getParent();
        Path folder = files.folder().toAbsolutePath().normalize();
        if (folder.equals(there) || Files.exists(folder.resolve("plan.json")) || Files.exists(folder.resolve("history"))) {
            throw new BadInput("--out " + files.folder() + ": there is a plan in it already, which is kept as it is; name another folder");
        }
    }

    /** Several searches share the seconds, so the end of them all is watched here. */
    private SearchListener untilTimeIsUp(SearchListener listener) {
        boolean timed = search.seconds() > 0;
        long end = System.nanoTime() + search.seconds() * NANOS;
        return new SearchListener() {
            @Override
            public void improved(long schedules, Cost best) {
                listener.improved(schedules, best);
            }

            @Override
            public boolean stopAsked() {
                return listener.stopAsked() || timed && System.nanoTime() - end >= 0;
            }
        };
    }

    private Exit exit(Replanned made) {
        if (made.plan().findings().size() > made.news().inFact().size()) {
            surroundings.err().println("Fault in the program: the audit found broken rules in what is planned from now on, do not work by it.");
            return Exit.FAULT;
        }
        return made.news().inFact().isEmpty() ? Exit.of(made.plan()) : Exit.NOT_ALL_ON_TIME;
    }

    private SearchLimits limits(Problem problem) {
        int steps = Math.max(1, problem.steps().size());
        return search.isOpen() ? SearchLimits.ofSteps(search.seed(), Math.max(200, (steps > LARGE ? LARGE_EFFORT : EFFORT) / steps))
                : search.limits();
    }
}
