package crumbclock.app.replan;

import crumbclock.domain.plan.Finding;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.plan.Timetable;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import java.util.List;

/**
 * One way to go on, audited as a whole.
 *
 * @param problem   with all records in it
 * @param own    findings that what happened has not caused; none in a plan that may be followed
 * @param schedules schedules that the search made for it
 */
record Candidate(Situation situation, Problem problem, Timetable timetable, AuditResult audit, List<Finding> own, long schedules)
        implements Comparable<Candidate> {

    static Candidate of(Situation situation, RestProblem rest, Merged.Whole whole, long schedules) {
        AuditResult audit = Audit.audit(whole.problem(), whole.timetable());
        var facts = new Facts(situation.problem(), situation.now(), situation.happened(), rest.broken(), whole.timetable());
        return new Candidate(situation, whole.problem(), whole.timetable(), audit,
                audit.findings().stream().filter(finding -> !facts.caused(finding)).toList(), schedules);
    }

    boolean isSound() {
        return own.isEmpty();
    }

    /** The better one comes first. */
    @Override
    public int compareTo(Candidate other) {
        if (own.size() != other.own.size()) {
            return Integer.compare(own.size(), other.own.size());
        }
        return audit.mediumCost() != other.audit.mediumCost() ? Long.compare(audit.mediumCost(), other.audit.mediumCost())
                : Long.compare(audit.softCost(), other.audit.softCost());
    }
}
