package crumbclock.app;

import crumbclock.app.reason.SlackTrace;
import crumbclock.app.reason.WhyNot;
import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.search.SearchResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes an audited plan of a problem, with the reasons for all that is late or not possible. */
public final class PlanProblem {

    private PlanProblem() {
    }

    /**
     * Searches, explains and audits. A plan with findings is returned, too: it must be shown as unsound.
     *
     * @param listener hears of the search alone; once it asks to stop, reasons are still looked for
     * @throws PlanFault when the engine's cost and the audit's differ
     */
    public static Plan plan(Problem problem, SearchLimits limits, SearchListener listener) {
        SearchResult found = PlanSearch.search(problem, limits, listener);
        Timetable timetable = explained(problem, found.timetable(), limits.seed());
        AuditResult audit = Audit.audit(problem, timetable);
        agree(found.cost(), audit);
        return new Plan(problem.title(), timetable, audit.findings(), audit.cost(), audit.mediumCost(), audit.softCost(),
                new Plan.SearchNote(limits.seed(), found.schedules()), Optional.of(bound(problem, timetable)));
    }

    /** What no sound plan that makes the same orders can be better than. */
    static LowerBound bound(Problem problem, Timetable timetable) {
        Set<String> made = timetable.outcomes().stream().filter(Outcome::possible).map(Outcome::orderId)
                .collect(Collectors.toSet());
        return Bound.of(problem, made);
    }

    /** Costs of an unsound timetable may be measured differently; its findings say enough. */
    static void agree(Cost engine, AuditResult audit) {
        if (audit.isSound() && !engine.equals(new Cost(audit.mediumCost(), audit.softCost()))) {
            throw new PlanFault("the engine and the audit add up different costs for one plan: engine "
                    + engine.medium() + " medium and " + engine.soft() + " soft points, audit " + audit.mediumCost()
                    + " medium and " + audit.softCost() + " soft points");
        }
    }

    private static Timetable explained(Problem problem, Timetable timetable, long seed) {
        Map<String, List<Outcome.Reason>> reasons = new WhyNot(problem, seed).reasons(timetable.outcomes());
        var trace = new SlackTrace(problem, timetable);
        return timetable.withEachOutcome(outcome -> outcome.explained(reasons.get(outcome.orderId()),
                outcome.possible() ? trace.stepsWithoutSlack(outcome.orderId()) : List.of()));
    }
}
