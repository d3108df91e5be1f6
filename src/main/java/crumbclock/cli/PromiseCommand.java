package crumbclock.cli;

import crumbclock.app.AuditPlan;
import crumbclock.app.PlanProblem;
import crumbclock.app.promise.PromiseOrder;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.report.promise.PromiseSummary;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
        PromiseInputs inputs = Inputs.withOneMore(problemFile, change.changes(), order);
        int minute = now == null ? inputs.askedAt() : Inputs.now(now, inputs.asked().problem().clock(), spec);
        Path folder = PlanFiles.in(out == null ? PlanFiles.usual(problemFile, "promise") : out, problemFile).folder();
        Plan known = planFile == null ? null : known(inputs.base().problem());
        surroundings.interrupt().watch();
        PromiseAnswer answer;
        try (var progress = new PromiseProgress(surroundings, steps.quiet())) {
            Plan have = known == null ? planned(inputs.base().problem(), BASE_SHARE * length, progress) : known;
            answer = PromiseOrder.answer(inputs.question(have, minute), SearchLimits.ofSteps(steps.seed(), length), progress);
        }
        PromiseFiles.write(folder, answer);
        if (!steps.quiet()) {
            surroundings.out().print(PromiseSummary.render(answer));
            surroundings.out().println();
            surroundings.out().println("Look at " + folder.resolve("promise.html") + "; each plan is in a folder beside it.");
        }
        return exit(answer).code();
    }

    private Plan known(Problem base) {
        KnownPlan known = Inputs.known(planFile, base);
        if (!known.state().again().isEmpty()) {
            throw new BadInput("--plan " + planFile + ": makes batch " + known.state().again().get(0).batchId() + " a second time; expected a plan with"
                    + " the batches of the problem file alone. Name the plan before it, from the history beside it.");
        }
        Plan plan = AuditPlan.audit(base, known.plan());
        if (!plan.isSound()) {
            throw new BadInput("--plan " + planFile + ": breaks " + plan.findings().size() + (plan.findings().size() == 1 ? " rule" : " rules")
                    + " of this problem, the first: " + plan.findings().get(0).message() + "; expected a sound plan of it. See `crumbclock audit`.");
        }
        return plan;
    }

    private Plan planned(Problem base, long length, PromiseProgress progress) {
        Plan plan = PlanProblem.plan(base, SearchLimits.ofSteps(steps.seed(), length), SearchListener.stoppedBy(progress::stopAsked));
        if (!plan.isSound()) {
            throw new IllegalStateException("the audit found broken rules in the plan without the new order");
        }
        return plan;
    }

    private static Exit exit(PromiseAnswer answer) {
        boolean onTime = answer.wished().isPresent() && answer.wished().get().plan().timetable().outcomes().stream()
                .allMatch(outcome -> outcome.possible() && outcome.lateMinutes() == 0);
        return onTime ? Exit.ON_TIME : Exit.NOT_ALL_ON_TIME;
    }
}
