package crumbclock.cli;

import crumbclock.app.replan.DayProblem;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.plan.DayStates;
import crumbclock.formats.plan.PlanJson;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A plan from its file.
 *
 * @param problem as it stands in its file, with the batches that the plan makes a second time and the repairs that it has
 * @param state   what else the plan differs in, when it was made while the day ran; otherwise {@link DayState#NONE}
 */
record KnownPlan(Problem problem, Plan plan, DayState state) {

    /** Empty when the log holds an issue of the file. */
    static Optional<KnownPlan> read(Path file, Problem base, IssueLog log) {
        return SourceFile.read(file, log).flatMap(source -> {
            var own = new IssueLog();
            Optional<List<BatchAgain>> again = DayStates.again(source, base, own);
            Problem whole = again.map(list -> DayProblem.again(base, list)).orElse(base);
            Problem problem = again.isEmpty() ? whole : DayProblem.repaired(whole, DayStates.repairs(source, whole, own));
            Optional<Plan> plan = again.isEmpty() ? Optional.empty() : PlanJson.read(source.name(), source.text(), problem, own);
            DayState state = again.isEmpty() ? DayState.NONE : DayStates.read(source, problem, own).orElse(DayState.NONE);
            own.sorted().forEach(log::add);
            return own.isEmpty() ? plan.map(one -> new KnownPlan(problem, one, state)) : Optional.empty();
        });
    }
}
