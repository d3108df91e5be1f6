package crumbclock.cli;

import crumbclock.app.AuditPlan;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.ClockText;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Checks every rule of a plan file again, whoever wrote it. */
@Command(name = "audit", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Checks a plan against all rules and adds up its cost again.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time", "1:sound, but an order is late or not possible",
            "2:bad input or options", "3:a broken rule, or a cost other than the plan says"})
final class AuditCommand implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "PROBLEM", description = "Problem file (JSON).")
    private Path problemFile;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan.json that was made of it.")
    private Path planFile;

    @Mixin
    private ChangeOption change;

    AuditCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Problem problem = Inputs.changed(problemFile, change.changes()).problem();
        Plan told = Inputs.plan(planFile, problem);
        Plan audited = AuditPlan.audit(problem, told);
        PrintStream out = surroundings.out();
        var clock = new ClockText(problem.clock());
        audited.findings().forEach(finding -> out.println(sentence(clock, finding)));
        boolean costAgrees = told.mediumCost() == audited.mediumCost() && told.softCost() == audited.softCost();
        if (!costAgrees) {
            out.println("The plan says that it costs " + points(told) + "; the audit adds up " + points(audited) + ".");
        }
        out.println(planFile + ": " + verdict(audited) + ", " + points(audited) + ".");
        return costAgrees ? Exit.of(audited).code() : Exit.FAULT.code();
    }

    private static String sentence(ClockText clock, Finding finding) {
        return finding.rule() + " " + finding.rule().title() + ": " + clock.daySpan(finding.when())
                + (finding.place().isEmpty() ? "" : ", " + finding.place()) + ": " + finding.message();
    }

    private static String verdict(Plan plan) {
        int broken = plan.findings().size();
        return plan.isSound() ? "sound" : "NOT SOUND, " + broken + " broken rule" + (broken == 1 ? "" : "s");
    }

    private static String points(Plan plan) {
        return plan.mediumCost() + " points for lateness and " + plan.softCost() + " for wishes";
    }
}
