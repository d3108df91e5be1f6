package crumbclock.app;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.Audit;
import java.util.Optional;

/** Audits a plan that came from elsewhere, such as a file that somebody may have changed. */
public final class AuditPlan {

    private AuditPlan() {
    }

    /** The same timetable with findings, cost and bound made anew; what the plan said of itself counts for nothing. */
    public static Plan audit(Problem problem, Plan plan) {
        var audit = Audit.audit(problem, plan.timetable());
        return new Plan(plan.problemTitle(), plan.timetable(), audit.findings(), audit.cost(), audit.mediumCost(),
                audit.softCost(), plan.search(), Optional.of(PlanProblem.bound(problem, plan.timetable())));
    }
}
