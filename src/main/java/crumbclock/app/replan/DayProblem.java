package crumbclock.app.replan;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The problem of a plan that was made while the day ran: what it differs in, and the same problem again from that. */
public final class DayProblem {

    private DayProblem() {
    }

    /**
     * The problem with batches that are made a second time, which the steps of such a plan may belong to.
     *
     * @param base  as it stands in its file
     * @param again each of a batch that is there by then, for cakes that use it
     */
    public static Problem again(Problem base, List<BatchAgain> again) {
        Problem problem = base;
        for (BatchAgain one : again) {
            problem = Rework.again(problem, one.batchId(), new LinkedHashSet<>(one.cakeIds()));
        }
        return problem;
    }

    /**
     * The problem with repairs that are done, which the steps of such a plan may belong to.
     *
     * @param base with the batches that are made a second time
     * @param ids  of the repairs
     */
    public static Problem repaired(Problem base, List<String> ids) {
        return Repairs.with(base, ids);
    }

    /**
     * The whole problem that the plan was made and audited for.
     *
     * @param base      as it stands in its file
     * @param timetable of the plan, which holds the times of what had begun
     */
    public static Problem whole(Problem base, DayState state, Timetable timetable) {
        Problem problem = new KitchenNow(state.kitchen()).in(repaired(again(base, state.again()), state.repairs()));
        problem = problem.withEachStep(step -> {
            Step left = state.skipped().contains(step.id()) ? StepCopies.skipped(step) : state.slower().containsKey(step.id())
                    ? step.withHandsOn(Situation.longer(step.handsOn().orElseThrow(), state.slower().get(step.id()))) : step;
            return state.happened().contains(step.id()) ? left : StepCopies.notBefore(left, state.now());
        });
        var plan = new OldPlan(timetable);
        List<FixedStep> facts = new ArrayList<>();
        for (String id : state.happened()) {
            plan.find(id).ifPresent(step -> facts.add(plan.record(step)));
        }
        return problem.withKept(state.known()).withFixedSteps(facts);
    }

    /** What had begun, as the plan tells it. */
    static Map<String, Happened> happened(DayState state, Timetable timetable) {
        Map<String, Happened> happened = new LinkedHashMap<>();
        for (PlacedStep step : timetable.steps()) {
            if (state.happened().contains(step.stepId())) {
                boolean open = state.goingOn().contains(step.stepId());
                happened.put(step.stepId(), new Happened(step.start(), step.end(), open));
            }
        }
        return happened;
    }

    /**
     * What a situation differs in from the problem that it began with.
     *
     * @param base   with the batches of {@code before}
     * @param before of the known plan
     * @param made   the situation's problem with all records in it
     */
    static DayState state(Problem base, DayState before, DayLog log, Situation situation, Problem made) {
        List<BatchAgain> again = new ArrayList<>(before.again());
        again.addAll(situation.again());
        Map<String, Step> plain = new LinkedHashMap<>();
        List<String> repairs = Repairs.done(made).stream().map(Repair::id).toList();
        repaired(again(base, situation.again()), repairs).steps().forEach(step -> plain.put(step.id(), step));
        Map<String, Integer> slower = new LinkedHashMap<>();
        Set<String> skipped = new LinkedHashSet<>();
        for (Step step : made.steps()) {
            Step was = plain.get(step.id());
            int longer = work(step) - work(was);
            if (!was.handsOn().equals(step.handsOn()) && step.equals(StepCopies.skipped(was).withEarliest(step.earliest()))) {
                skipped.add(step.id());
            } else if (longer > 0) {
                slower.put(step.id(), longer);
            }
        }
        Map<String, Integer> lostAt = new LinkedHashMap<>(before.lostAt());
        situation.lostAt().forEach((id, minute) -> lostAt.merge(id, minute, Math::max));
        Set<String> happened = new LinkedHashSet<>();
        made.fixedSteps().forEach(fixed -> happened.add(fixed.step().stepId()));
        Set<String> goingOn = new LinkedHashSet<>();
        situation.happened().forEach((id, one) -> {
            if (one.open()) {
                goingOn.add(id);
            }
        });
        return new DayState(situation.now(), log.kitchen().stream().map(event -> new KitchenEvent(0, event.kind(), event.id(), event.when())).toList(),
                slower, skipped, again, repairs, lostAt, happened, goingOn, made.kept());
    }

    private static int work(Step step) {
        return step.handsOn().map(HandsOn::minutes).orElse(0);
    }
}
