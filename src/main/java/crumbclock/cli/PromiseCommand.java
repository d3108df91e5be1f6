package crumbclock.cli;

import crumbclock.app.PlanProblem;
import crumbclock.app.promise.PlanInHand;
import crumbclock.app.promise.PromiseOrder;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.report.promise.PromiseSummary;
import crumbclock.report.view.ClockText;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells whether one more order can be promised, for when, at whose cost, until when, and what would help. */
@Command(name = "promise", mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Tells whether one more order can be made as wished and what that costs the others, the earliest times that can be promised,",
            "until when it can wait for a yes, and what would help. Each answer is a plan that was found, audited and written.",
            "ORDER adds one order: a file of changes, or words such as \"add late-order.csv\" or \"copy C1 as C7\".",
            "Each search ends after " + PromiseCommand.DEFAULT_STEPS + " steps, or as many as --steps says.",
            "Ctrl-C ends it early and keeps the answers so far."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:possible as wished, and all others on time", "1:not as wished, or others would be late",
            "2:bad input or options; nothing was written", "3:fault: the program failed",
            "130:ended with Ctrl-C; answers found before that were written"})
final class PromiseCommand implements Callable<Integer> {

    static final long DEFAULT_STEPS = 1_500;
    /** The plan that people have would have been searched for longer. */
    private static final int BASE_SHARE = 4;

    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "PROBLEM", description = "Problem file (JSON), without the new order.")
    private Path problemFile;

    @Parameters(index = "1", paramLabel = "ORDER", description = "The new order: a file of changes, or words, that add it and change nothing else.")
    private String order;

    @Mixin
    private ChangeOption change;

    @Option(names = "--plan", paramLabel = "PLAN", description = "The plan.json that people have; otherwise one is planned first.")
    private Path planFile;

    @Option(names = "--now", paramLabel = "TIME",
            description = "When it is asked, such as \"Fri 18:20\"; what begins before stays (default: when its first step may begin).")
    private String now;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder to write to; otherwise reports/, the problem's name and -promise.")
    private Path out;

    @Mixin
    private StepOptions steps;

    PromiseCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        steps.check(spec);
        long length = steps.stepsOr(DEFAULT_STEPS);
        Path folder = PlanFiles.in(out == null ? PlanFiles.usual(problemFile, "promise") : out, problemFile).folder();
        refuseToOverwrite(folder);
        PromiseInputs inputs = Inputs.withOneMore(problemFile, change.changes(), order);
        PromisePlan known = planFile == null ? null : PromisePlan.read(planFile, inputs);
        int minute = minute(inputs, known == null ? 0 : known.now());
        surroundings.interrupt().watch();
        PromiseAnswer answer;
        PlanInHand have;
        try (var progress = new PromiseProgress(surroundings, steps.quiet())) {
            var limits = SearchLimits.ofSteps(steps.seed(), BASE_SHARE * length);
            var listener = SearchListener.stoppedBy(progress::stopAsked);
            have = known == null ? planned(inputs.base().problem(), limits, listener) : known.inHand(minute, limits, listener)
                    .orElseThrow(() -> new BadInput("--plan " + planFile + ": with the changes no sound way was found to go on by it;"
                            + " name a plan that was made with them. See `crumbclock plan --change`."));
            answer = PromiseOrder.answer(inputs.question(have, minute), SearchLimits.ofSteps(steps.seed(), length), progress);
        }
        PromiseFiles.write(folder, answer, have);
        if (!steps.quiet()) {
            if (known != null) {
                known.news(have).ifPresent(surroundings.out()::println);
            }
            surroundings.out().print(PromiseSummary.render(answer));
            surroundings.out().println();
            surroundings.out().println("Look at " + folder.resolve("promise.html") + "; each plan is in a folder beside it.");
        }
        return exit(answer).code();
    }

    /** When it is asked: by then the plan may know already how the day went. */
    private int minute(PromiseInputs inputs, int known) {
        if (now == null) {
            return Math.max(known, inputs.askedAt());
        }
        int minute = Inputs.now(now, inputs.asked().problem().clock(), spec);
        if (minute < known) {
            throw new ParameterException(spec.commandLine(), "--now: read \"" + now + "\"; expected "
                    + new ClockText(inputs.asked().problem().clock()).dayTime(known) + " or later, since the plan says how things stood then");
        }
        return minute;
    }

    /** The plan that people work by stays what it was. */
    private void refuseToOverwrite(Path folder) {
        if (planFile != null && planFile.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize())) {
            throw new BadInput("--out " + folder + ": the plan that people have lies in it and is kept as it is; name another folder");
        }
    }

    private static PlanInHand planned(Problem base, SearchLimits limits, SearchListener listener) {
        Plan plan = PlanProblem.plan(base, limits, listener);
        if (!plan.isSound()) {
            throw new IllegalStateException("the audit found broken rules in the plan without the new order");
        }
        return PlanInHand.planned(base, plan);
    }

    private static Exit exit(PromiseAnswer answer) {
        boolean onTime = answer.wished().isPresent() && answer.wished().get().plan().timetable().outcomes().stream()
                .allMatch(outcome -> outcome.possible() && outcome.lateMinutes() == 0);
        return onTime ? Exit.ON_TIME : Exit.NOT_ALL_ON_TIME;
    }
}
