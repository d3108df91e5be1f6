package crumbclock.app.promise;

import crumbclock.app.AuditPlan;
import crumbclock.app.replan.DayAudit;
import crumbclock.app.replan.DayProblem;
import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.order.Cake;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The plan that people work by, and the problem as it has become since that in the file, when the plan was made while the day ran.
 *
 * @param problem without the new order
 * @param plan    audited for it; what it breaks is what has happened
 * @param state   what the problem differs in from the one in its file
 */
public record PlanInHand(Problem problem, Plan plan, DayState state) {

    /** A plan that was made for the problem as it stands in its file. */
    public static PlanInHand planned(Problem base, Plan plan) {
        return new PlanInHand(base, plan, DayState.NONE);
    }

    /** What the plan breaks of a problem, whoever made it for which; empty when people can go on by it. */
    public static List<Finding> broken(Problem base, Plan plan, DayState state) {
        if (state.equals(DayState.NONE)) {
            return AuditPlan.audit(base, plan).findings();
        }
        DayAudit audit = DayAudit.audit(base, state, plan);
        return audit.plan().findings().stream().filter(finding -> !audit.inFact().contains(finding)).toList();
    }

    /** A plan that breaks nothing of a problem. */
    public static PlanInHand fitting(Problem base, Plan plan, DayState state) {
        return state.equals(DayState.NONE) ? planned(base, AuditPlan.withBound(base, plan))
                : new PlanInHand(DayProblem.whole(base, state, plan.timetable()), DayAudit.audit(base, state, plan).plan(), state);
    }

    /**
     * A plan that was made for a problem without some changes, made to fit the problem with them: steps that are the same stay where
     * they are if they can, as on a day on which something happens.
     *
     * @param before the problem that the plan was made for
     * @param base   the problem as it is
     * @param now    what begins before went as planned
     * @return empty when no sound way was found
     */
    public static Optional<PlanInHand> changed(Problem before, Problem base, Plan plan, DayState state, int now, SearchLimits limits, SearchListener listener) {
        var old = new SamePart(before, base, plan, state, now);
        Problem whole = old.state().equals(DayState.NONE) ? base : DayProblem.whole(base, old.state(), old.plan().timetable());
        Replanned made = Replan.replan(whole, old.plan(), DayLog.NOTHING, now, 0, limits, listener);
        return made.news().inFact().containsAll(made.plan().findings())
                ? Optional.of(new PlanInHand(made.problem(), made.plan(), old.state(made.state()))) : Optional.empty();
    }

    /** The same day for a problem with more orders; their cakes use what is made of a batch last. */
    Problem with(Problem asked) {
        return state.equals(DayState.NONE) ? asked : DayProblem.whole(asked, among(again(asked), state), plan.timetable());
    }

    private List<BatchAgain> again(Problem asked) {
        Set<String> known = problem.cakes().stream().map(Cake::id).collect(Collectors.toSet());
        List<BatchAgain> again = new ArrayList<>();
        for (BatchAgain one : state.again()) {
            List<String> cakes = new ArrayList<>(one.cakeIds());
            DayProblem.again(asked, again).cakes().stream().filter(cake -> !known.contains(cake.id()) && cake.batchIds().contains(one.batchId()))
                    .map(Cake::id).forEach(cakes::add);
            again.add(new BatchAgain(one.batchId(), cakes));
        }
        return again;
    }

    private static DayState among(List<BatchAgain> again, DayState state) {
        return new DayState(state.now(), state.kitchen(), state.slower(), state.skipped(), again, state.repairs(), state.lostAt(), state.happened(),
                state.goingOn(), state.known());
    }

    /** What a promised plan's problem differs in from the problem with the new order: the day so far, and the plan that people have. */
    public DayState stateOf(PromisedPlan promised) {
        Problem made = promised.problem();
        int now = made.kept().now();
        Set<String> stays = made.steps().stream().filter(step -> step.kind() == StepKind.UNATTENDED).map(Step::id).collect(Collectors.toSet());
        Set<String> happened = new LinkedHashSet<>();
        Set<String> goingOn = new LinkedHashSet<>();
        made.fixedSteps().forEach(fixed -> {
            PlacedStep step = fixed.step();
            happened.add(step.stepId());
            if (stays.contains(step.stepId()) && step.start() < now && now < step.end()) {
                goingOn.add(step.stepId());
            }
        });
        return new DayState(now, state.kitchen(), state.slower(), state.skipped(), again(made), state.repairs(), state.lostAt(), happened, goingOn, made.kept());
    }
}
