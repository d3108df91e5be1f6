package crumbclock.cli;

import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.engine.cost.Cost;
import crumbclock.formats.day.DayTimes;
import crumbclock.formats.plan.PlanJson;
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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans again while the day runs, and writes what is different. */
@Command(name = "replan", mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Plans again from now on, with what has happened, and changes as little of the known plan as it must.",
            "Writes the same files as plan, into another folder than the known plan's, and keeps each plan in its history.",
            "Without --seconds and --steps it ends after as many steps as take a few seconds."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time",
            "1:planned, but an order is late or not possible, or what happened has broken a rule",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; a plan found before that was written"})
final class ReplanCommand implements Callable<Integer> {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE-HHmm", Locale.ENGLISH);
    private static final int MOST_SECONDS = 86_400;
    private static final long MILLIS = 1_000;
    private static final long NANOS = 1_000_000_000L;
    /** Timetables that are made × steps of the problem: a few seconds. */
    private static final long EFFORT = 900_000;

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

    @Option(names = "--seconds", paramLabel = "N", description = "Search for about N seconds.")
    private Integer seconds;

    @Option(names = "--steps", paramLabel = "N",
            description = "End after N steps of search: the same steps and seed give the same plan.")
    private Long steps;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
            description = "Start of all random choices (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--quiet", description = "No progress and no summary; faults are still told.")
    private boolean quiet;

    ReplanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
            throw new ParameterException(spec.commandLine(), "--seconds: read " + seconds + "; expected 1 to " + MOST_SECONDS);
        }
        if (steps != null && steps < 1) {
            throw new ParameterException(spec.commandLine(), "--steps: read " + steps + "; expected at least 1");
        }
        Problem problem = Inputs.changed(problemFile, change.changes()).problem();
        int minute = DayTimes.now(problem.clock(), now).orElseThrow(() -> new ParameterException(spec.commandLine(),
                "--now: read \"" + now + "\"; expected a time inside the problem such as 11:00, with its day, as in \"Sat 11:00\","
                        + " when the problem lasts longer than one"));
        KnownPlan known = Inputs.known(planFile, problem);
        DayLog log = Inputs.day(dayFile, known.problem(), minute);
        PlanFiles files = PlanFiles.in(out == null ? usualFolder(problemFile, problem.clock(), minute) : out, problemFile);
        refuseToOverwrite(files);
        PlanHistory history = PlanHistory.of(planFile);
        surroundings.interrupt().watch();
        Replanned made;
        try (Progress progress = quiet ? Progress.quiet(surroundings.interrupt())
                : new Progress(surroundings.err(), surroundings.interrupt())) {
            made = Replan.replan(known.problem(), known.plan(), known.state(), log, minute, limits(problem), untilTimeIsUp(progress));
        }
        files.write(made.problem(), made.plan(), made.news(), made.state());
        history.add(now, reason.isEmpty() ? dayFile.getFileName().toString() : reason, PlanJson.write(made.problem(), made.plan(), made.state()));
        history.write(files.folder());
        if (!quiet) {
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
        long end = seconds == null ? Long.MAX_VALUE : System.nanoTime() + seconds * NANOS;
        return new SearchListener() {
            @Override
            public void improved(long schedules, Cost best) {
                listener.improved(schedules, best);
            }

            @Override
            public boolean stopAsked() {
                return listener.stopAsked() || seconds != null && System.nanoTime() - end >= 0;
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
        if (seconds == null && steps == null) {
            return SearchLimits.ofSteps(seed, Math.max(200, EFFORT / Math.max(1, problem.steps().size())));
        }
        return new SearchLimits(seed, steps == null ? Long.MAX_VALUE : steps,
                seconds == null ? Long.MAX_VALUE : seconds * MILLIS, Long.MAX_VALUE);
    }
}
