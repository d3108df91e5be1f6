package crumbclock.app;

import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.Audit;
import java.util.Optional;

/** Audits a plan that came from elsewhere, such as a file that somebody may have changed. */
public final class AuditPlan {

    private AuditPlan() {
    }

    /** The same timetable with findings and cost made anew; what the plan said of itself counts for nothing. */
    public static Plan audit(Problem problem, Plan plan) {
        return audited(problem, plan, Optional.empty());
    }

    /** The same with the bound, which takes longer. */
    public static Plan withBound(Problem problem, Plan plan) {
        return audited(problem, plan, Optional.of(PlanProblem.bound(problem, plan.timetable())));
    }

    private static Plan audited(Problem problem, Plan plan, Optional<LowerBound> bound) {
        var audit = Audit.audit(problem, plan.timetable());
        return new Plan(plan.problemTitle(), plan.timetable(), audit.findings(), audit.cost(), audit.mediumCost(), audit.softCost(),
                plan.search(), bound);
    }
}
