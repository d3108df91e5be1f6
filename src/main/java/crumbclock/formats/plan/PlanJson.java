package crumbclock.formats.plan;

import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader;
import java.util.Optional;

/** Plans as JSON: complete enough to audit them again and to plan on from them. */
public final class PlanJson {

    private PlanJson() {
    }

    /** The plan as text; equal plans give equal text, lines end with {@code \n}. */
    public static String write(Problem problem, Plan plan) {
        return write(problem, plan, DayState.NONE);
    }

    /** The same for a plan made while the day ran, with what its problem differs in from the one in its file. */
    public static String write(Problem problem, Plan plan, DayState state) {
        return new PlanWriter(problem).write(plan, state);
    }

    /**
     * Reads a plan of this problem, sound or not; whether it is sound is for the audit to say.
     *
     * @param name of the file, for messages
     * @return empty when the log holds an issue of this file
     */
    public static Optional<Plan> read(String name, String text, Problem problem, IssueLog log) {
        var ownLog = new IssueLog();
        var plan = JsonLoader.loadWithSpot(SourceFile.ofText(name, text), "plan", PlanFile.class, ownLog)
                .map(loaded -> new PlanReader(problem, ownLog).read(loaded));
        ownLog.sorted().forEach(log::add);
        return ownLog.isEmpty() ? plan : Optional.empty();
    }
}
