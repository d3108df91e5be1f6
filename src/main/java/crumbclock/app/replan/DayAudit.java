package crumbclock.app.replan;

import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.Audit;
import java.util.List;

/**
 * Audits a plan that was made while the day ran, for the problem as it was by then.
 *
 * @param plan   with findings and cost made anew
 * @param inFact of its findings those that what happened has broken; nothing planned from then on breaks these
 */
public record DayAudit(Plan plan, List<Finding> inFact) {

    public DayAudit {
        inFact = List.copyOf(inFact);
    }

    /**
     * What the plan said of itself counts for nothing, but for what had begun and when: nobody else has written that down.
     *
     * @param base as it stands in its file
     */
    public static DayAudit audit(Problem base, DayState state, Plan plan) {
        Problem whole = DayProblem.whole(base, state, plan.timetable());
        var audit = Audit.audit(whole, plan.timetable());
        var happened = DayProblem.happened(state, plan.timetable());
        var facts = new Facts(whole, state.now(), happened, RestProblem.broken(whole, happened, state.now()), plan.timetable());
        var bound = DayBound.of(whole, happened, state.now(), plan.timetable(), !audit.isSound());
        return new DayAudit(new Plan(plan.problemTitle(), plan.timetable(), audit.findings(), audit.cost(), audit.mediumCost(),
                audit.softCost(), plan.search(), bound), audit.findings().stream().filter(facts::caused).toList());
    }
}
