package crumbclock.cli;

import crumbclock.app.AuditPlan;
import crumbclock.app.replan.DayAudit;
import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.ClockText;
import crumbclock.report.view.FindingWords;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Checks every rule of a plan file again, whoever wrote it. */
@Command(name = "audit", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Checks a plan against all rules and adds up its cost again.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time", "1:sound, but an order is late or not possible, or what happened on the day broke a rule",
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
        KnownPlan known = Inputs.known(planFile, problem);
        Plan told = known.plan();
        DayAudit made = known.state().equals(DayState.NONE) ? new DayAudit(AuditPlan.audit(problem, told), List.of())
                : DayAudit.audit(problem, known.state(), told);
        Plan audited = made.plan();
        PrintStream out = surroundings.out();
        var clock = new ClockText(problem.clock());
        audited.findings().forEach(finding -> out.println((made.inFact().contains(finding) ? "in fact, " : "")
                + FindingWords.sentence(clock, finding)));
        boolean costAgrees = told.mediumCost() == audited.mediumCost() && told.softCost() == audited.softCost();
        if (!costAgrees) {
            out.println("The plan says that it costs " + points(told) + "; the audit adds up " + points(audited) + ".");
        }
        out.println(planFile + ": " + verdict(made, clock.dayTime(known.state().now())) + ", " + points(audited) + ".");
        return exit(made, costAgrees).code();
    }

    /** What happened is nobody's fault any more, but a sound plan of the whole day it is not. */
    private static Exit exit(DayAudit made, boolean costAgrees) {
        if (!costAgrees || made.plan().findings().size() > made.inFact().size()) {
            return Exit.FAULT;
        }
        return made.inFact().isEmpty() ? Exit.of(made.plan()) : Exit.NOT_ALL_ON_TIME;
    }

    private static String verdict(DayAudit made, String now) {
        int inFact = made.inFact().size();
        int broken = made.plan().findings().size() - inFact;
        if (broken > 0) {
            return "NOT SOUND, " + rules(broken);
        }
        return inFact == 0 ? "sound" : "sound from " + now + " on, with " + rules(inFact) + " by what happened";
    }

    private static String rules(int broken) {
        return broken + " broken rule" + (broken == 1 ? "" : "s");
    }

    private static String points(Plan plan) {
        return plan.mediumCost() + " points for lateness and " + plan.softCost() + " for wishes";
    }
}
