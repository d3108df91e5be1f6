package crumbclock.app.promise;

import crumbclock.app.replan.DayProblem;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Of a plan for one problem, what is the same in another one: its steps that both have alike, and what had begun of any that both have. */
final class SamePart {

    private final Plan plan;
    private final DayState state;

    /** @param state of the day on which the plan was made */
    SamePart(Problem before, Problem after, Plan whole, DayState state, int now) {
        Set<String> batches = after.batches().stream().map(Batch::id).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> cakes = after.cakes().stream().map(Cake::id).collect(Collectors.toSet());
        List<BatchAgain> again = new ArrayList<>();
        for (BatchAgain one : state.again()) {
            List<String> users = one.cakeIds().stream().filter(cakes::contains).toList();
            if (batches.contains(one.batchId()) && !users.isEmpty()) {
                again.add(new BatchAgain(one.batchId(), users));
                DayProblem.again(after, again).batches().forEach(batch -> batches.add(batch.id()));
            }
        }
        Problem afterAgain = DayProblem.again(after, again);
        Set<String> repairable = afterAgain.repairs().stream().map(Repair::id).collect(Collectors.toSet());
        List<String> repairs = state.repairs().stream().filter(repairable::contains).toList();
        Map<String, Step> known = steps(DayProblem.repaired(DayProblem.again(before, state.again()), state.repairs()));
        Map<String, Step> present = steps(DayProblem.repaired(afterAgain, repairs));
        Set<String> same = whole.timetable().steps().stream().filter(step -> present.containsKey(step.stepId())
                && (step.start() < now || present.get(step.stepId()).equals(known.get(step.stepId())))).map(PlacedStep::stepId)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        this.plan = new Plan(after.title(), timetable(after, whole.timetable(), same), List.of(), List.of(), whole.mediumCost(), whole.softCost(),
                whole.search());
        this.state = state.equals(DayState.NONE) ? state : new DayState(state.now(), state.kitchen(), among(state.slower(), present.keySet()),
                among(state.skipped(), present.keySet()), again, repairs, among(state.lostAt(), present.keySet()), among(state.happened(), same),
                among(state.goingOn(), same), new KeptPlan(state.now(), state.known().steps().stream()
                        .filter(step -> present.containsKey(step.stepId())).toList()));
    }

    private static Map<String, Step> steps(Problem problem) {
        return problem.steps().stream().collect(Collectors.toMap(Step::id, Function.identity(), (one, other) -> one, LinkedHashMap::new));
    }

    private static Set<String> among(Set<String> ids, Set<String> known) {
        return ids.stream().filter(known::contains).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Map<String, Integer> among(Map<String, Integer> minutes, Set<String> known) {
        Map<String, Integer> left = new LinkedHashMap<>(minutes);
        left.keySet().retainAll(known);
        return left;
    }

    private static Timetable timetable(Problem after, Timetable whole, Set<String> same) {
        Set<String> orders = after.orders().stream().map(Order::id).collect(Collectors.toSet());
        return new Timetable(of(whole.steps(), PlacedStep::stepId, same), of(whole.touches(), PlacedTouch::stepId, same), whole.ovenRuns(),
                of(whole.pans(), PanPlace::stepId, same), of(whole.placements(), Placement::stepId, same), whole.cleanings(),
                whole.outcomes().stream().filter(one -> orders.contains(one.orderId())).toList());
    }

    private static <T> List<T> of(List<T> all, Function<T, String> id, Set<String> ids) {
        return all.stream().filter(one -> ids.contains(id.apply(one))).toList();
    }

    /** What is left of the plan. */
    Plan plan() {
        return plan;
    }

    /** What is left of the day so far. */
    DayState state() {
        return state;
    }

    /** The day so far and what planning on from it has added. */
    DayState state(DayState made) {
        Map<String, Integer> slower = new LinkedHashMap<>(state.slower());
        made.slower().forEach((id, minutes) -> slower.merge(id, minutes, Integer::sum));
        Set<String> skipped = new LinkedHashSet<>(state.skipped());
        skipped.addAll(made.skipped());
        List<BatchAgain> again = new ArrayList<>(state.again());
        again.addAll(made.again());
        Set<String> repairs = new LinkedHashSet<>(state.repairs());
        repairs.addAll(made.repairs());
        Map<String, Integer> lostAt = new LinkedHashMap<>(state.lostAt());
        made.lostAt().forEach((id, minute) -> lostAt.merge(id, minute, Math::max));
        return new DayState(made.now(), state.kitchen(), slower, skipped, again, List.copyOf(repairs), lostAt, made.happened(), made.goingOn(), made.known());
    }
}
