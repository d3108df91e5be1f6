package crumbclock.outside;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import crumbclock.engine.cost.Cost;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/**
 * A {@link TinyKitchens tiny kitchen} as a model for Choco, a general-purpose constraint library: written from the
 * problem's records alone, it knows neither the decoder nor the audit. Covers what those kitchens hold: work that may not
 * be put down, touches, shifts and breaks, pools, an oven for one pan, a store for one item, waits, orders set aside.
 */
final class ChocoKitchen {

    private final Problem problem;
    private final int horizon;
    private final Model model = new Model();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, IntVar> start = new LinkedHashMap<>();
    private final Map<String, IntVar> end = new LinkedHashMap<>();
    private final List<BoolVar> choices = new ArrayList<>();
    private final List<BoolVar> orders = new ArrayList<>();
    private final List<List<Task>> workOf = new ArrayList<>();
    private final List<List<BoolVar>> doesOf = new ArrayList<>();

    private ChocoKitchen(Problem problem) {
        this.problem = problem;
        horizon = problem.clock().horizonMinutes();
        problem.kitchen().people().forEach(person -> {
            workOf.add(new ArrayList<>());
            doesOf.add(new ArrayList<>());
        });
        problem.steps().forEach(this::step);
        problem.waits().forEach(this::wait);
        hands();
        pools();
        atOnce(problem.steps().stream().filter(step -> step.oven().isPresent()).toList(), 1);
        atOnce(problem.steps().stream().filter(step -> step.place().isPresent()).toList(),
                problem.kitchen().stores().get(0).shelves().size());
        problem.steps().stream().filter(step -> step.oven().isPresent()).forEach(this::heat);
    }

    /**
     * The least cost of any plan, proven.
     *
     * @throws AssertionError when the proof takes more than {@code mostNodes} decisions, or there is no plan
     */
    static Cost leastCost(Problem problem, long mostNodes) {
        return new ChocoKitchen(problem).solve(mostNodes);
    }

    /**
     * The earliest minute at which the last step of any plan can end, however late orders are, proven.
     *
     * @throws AssertionError as above
     */
    static int leastEnd(Problem problem, long mostNodes) {
        ChocoKitchen kitchen = new ChocoKitchen(problem);
        IntVar last = kitchen.lastEnd();
        return kitchen.least(last, mostNodes, last).getIntVal(last);
    }

    /**
     * The earliest minute at which an order can be ready while each other order is ready by its own minute, proven.
     *
     * @param until by order, for all orders but that one
     * @throws AssertionError as above
     */
    static int leastReady(Problem problem, String orderId, Map<String, Integer> until, long mostNodes) {
        ChocoKitchen kitchen = new ChocoKitchen(problem);
        for (Order order : problem.orders()) {
            if (!order.id().equals(orderId)) {
                order.cakes().forEach(cake -> kitchen.model.arithm(kitchen.end.get(cake.finishStepId()), "<=", until.get(order.id())).post());
            }
        }
        IntVar ready = kitchen.model.intVar("ready " + orderId, 0, kitchen.horizon);
        kitchen.model.max(ready, problem.orders().stream().filter(order -> order.id().equals(orderId)).flatMap(order -> order.cakes().stream())
                .map(cake -> kitchen.end.get(cake.finishStepId())).toArray(IntVar[]::new)).post();
        return kitchen.least(ready, mostNodes, ready).getIntVal(ready);
    }

    private void step(Step step) {
        IntVar from = model.intVar("start " + step.id(), Math.max(0, step.earliest()), horizon);
        IntVar until = model.intVar("end " + step.id(), 0, horizon);
        steps.put(step.id(), step);
        start.put(step.id(), from);
        end.put(step.id(), until);
        if (step.handsOn().isEmpty()) {
            int touches = step.putInMinutes() + step.takeOutMinutes();
            model.arithm(until, "-", from, ">=", touches + step.leastMinutes()).post();
            if (step.mostMinutes() < horizon) {
                model.arithm(until, "-", from, "<=", touches + step.mostMinutes()).post();
            }
            step.putIn().ifPresent(touch -> touch(touch, from));
            step.takeOut().ifPresent(touch -> touch(touch, model.offset(until, -touch.minutes())));
            return;
        }
        var work = step.handsOn().get();
        List<BoolVar> candidates = new ArrayList<>();
        for (int person = 0; person < workOf.size(); person++) {
            Person who = problem.kitchen().people().get(person);
            if (who.hasSkill(work.skill())) {
                int minutes = who.minutesAtOwnPace(work.workKind(), work.minutes());
                BoolVar does = does(person, from, minutes);
                model.arithm(until, "-", from, "=", minutes).impliedBy(does);
                candidates.add(does);
            }
        }
        model.sum(candidates.toArray(BoolVar[]::new), "=", work.people()).post();
    }

    private void touch(Touch touch, IntVar from) {
        List<BoolVar> candidates = new ArrayList<>();
        for (int person = 0; person < workOf.size(); person++) {
            if (problem.kitchen().people().get(person).hasSkill(touch.skill())) {
                candidates.add(does(person, from, touch.minutes()));
            }
        }
        model.sum(candidates.toArray(BoolVar[]::new), "=", 1).post();
    }

    /** Whether the person works for so many minutes from {@code from} on; if so, inside a shift and outside breaks. */
    private BoolVar does(int person, IntVar from, int minutes) {
        BoolVar does = model.boolVar();
        Person who = problem.kitchen().people().get(person);
        int[] possible = IntStream.rangeClosed(0, horizon - minutes)
                .filter(minute -> isThere(who, new Span(minute, minute + minutes))).toArray();
        model.member(from, possible).impliedBy(does);
        workOf.get(person).add(new Task(from, model.intVar(minutes), model.offset(from, minutes)));
        doesOf.get(person).add(does);
        choices.add(does);
        return does;
    }

    private boolean isThere(Person person, Span work) {
        return person.shifts().stream().anyMatch(shift -> shift.contains(work))
                && person.breaks().stream().noneMatch(pause -> pause.overlaps(work))
                && problem.kitchen().opening().stream().anyMatch(open -> open.contains(work));
    }

    private void wait(Wait wait) {
        model.arithm(start.get(wait.toStepId()), "-", end.get(wait.fromStepId()), ">=", wait.leastMinutes()).post();
        if (wait.hasMost()) {
            model.arithm(start.get(wait.toStepId()), "-", end.get(wait.fromStepId()), "<=", wait.mostMinutes()).post();
        }
    }

    private void hands() {
        for (int person = 0; person < workOf.size(); person++) {
            model.cumulative(workOf.get(person).toArray(Task[]::new), doesOf.get(person).toArray(IntVar[]::new),
                    model.intVar(1)).post();
            oneBeforeTheOther(workOf.get(person), doesOf.get(person));
        }
    }

    /** Branching on which of two comes first settles most: then everything may be as early as it can. */
    private void oneBeforeTheOther(List<Task> tasks, List<BoolVar> holds) {
        for (int one = 0; one < tasks.size(); one++) {
            for (int other = 0; other < one; other++) {
                BoolVar before = inOrder(tasks.get(one), tasks.get(other), holds.get(one), holds.get(other));
                BoolVar after = inOrder(tasks.get(other), tasks.get(one), holds.get(one), holds.get(other));
                model.addClauses(new BoolVar[] {before, after}, new BoolVar[] {holds.get(one), holds.get(other)});
                model.addClauses(new BoolVar[0], new BoolVar[] {before, after});
                orders.add(before);
            }
        }
    }

    /** True at most where both tasks are there, and then the one ends before the other starts. */
    private BoolVar inOrder(Task one, Task other, BoolVar oneHolds, BoolVar otherHolds) {
        BoolVar before = model.boolVar();
        model.addClauses(new BoolVar[] {oneHolds}, new BoolVar[] {before});
        model.addClauses(new BoolVar[] {otherHolds}, new BoolVar[] {before});
        model.arithm(one.getEnd(), "<=", other.getStart()).impliedBy(before);
        return before;
    }

    private Task between(IntVar from, IntVar until) {
        return new Task(from, model.intVar(0, horizon), until);
    }

    private void pools() {
        for (var pool : problem.kitchen().pools()) {
            List<Task> uses = new ArrayList<>();
            List<IntVar> units = new ArrayList<>();
            for (Step step : problem.steps()) {
                step.equipment().stream().filter(need -> need.poolId().equals(pool.id())).forEach(need -> {
                    uses.add(between(start.get(step.id()), end.get(need.untilStepId())));
                    units.add(model.intVar(need.units()));
                });
            }
            model.cumulative(uses.toArray(Task[]::new), units.toArray(IntVar[]::new), model.intVar(pool.count())).post();
        }
    }

    /** An oven with room for one pan, shelves with room for one item each: {@link #isTight} says that they are. */
    private void atOnce(List<Step> held, int most) {
        List<Task> tasks = held.stream().map(step -> between(start.get(step.id()), end.get(step.id()))).toList();
        IntVar[] ones = held.stream().map(step -> model.intVar(1)).toArray(IntVar[]::new);
        model.cumulative(tasks.toArray(Task[]::new), ones, model.intVar(most)).post();
        if (most > 1) {
            return;
        }
        oneBeforeTheOther(tasks, held.stream().map(step -> model.boolVar(true)).toList());
    }

    /** Whether the kitchen's one oven and one store hold a single pan or item, so that this model says all there is. */
    static boolean isTight(Problem problem) {
        var rack = problem.kitchen().cavities().get(0).racks().get(0);
        var shelf = problem.kitchen().stores().get(0).shelves().get(0);
        boolean single = problem.kitchen().cavities().size() == 1 && problem.kitchen().stores().size() == 1
                && problem.kitchen().cavities().get(0).racks().size() == 1
                && problem.kitchen().stores().get(0).shelves().size() == 1;
        return single && problem.steps().stream().allMatch(step ->
                step.oven().stream().flatMap(oven -> oven.pans().stream()).map(pan -> pan.footprint())
                        .allMatch(pan -> 2 * pan.widthMm() > rack.widthMm() && 2 * pan.depthMm() > rack.depthMm())
                && step.place().stream().map(place -> place.form().footprint())
                        .allMatch(item -> 2 * item.widthMm() > shelf.widthMm() && 2 * item.depthMm() > shelf.depthMm()));
    }

    /**
     * All bakes have one temperature, and somebody is there from the first to come to the last to go: so the oven has
     * to be heated before the first bake, and afterwards stays hot or is heated again in a gap longer than that takes.
     */
    private void heat(Step bake) {
        Cavity oven = problem.kitchen().cavities().get(0);
        int come = problem.kitchen().people().stream().mapToInt(person -> person.shifts().get(0).start()).min().orElseThrow();
        int go = problem.kitchen().people().stream().mapToInt(person -> person.shifts().get(0).end()).max().orElseThrow();
        model.arithm(start.get(bake.id()), ">=", come + oven.preheatMinutes()).post();
        model.arithm(end.get(bake.id()), "<=", go).post();
    }

    private Cost solve(long mostNodes) {
        IntVar last = lastEnd();
        List<IntVar> late = new ArrayList<>();
        List<Integer> points = new ArrayList<>();
        for (Order order : problem.orders()) {
            IntVar lateMinutes = model.intVar("late " + order.id(), 0, horizon);
            order.cakes().forEach(cake -> model.arithm(end.get(cake.finishStepId()), "-", lateMinutes, "<=",
                    order.handOver().until()).post());
            late.add(lateMinutes);
            points.add(order.importance() * problem.weights().lateMinute());
        }
        int most = points.stream().mapToInt(Integer::intValue).sum() * horizon;
        IntVar lateness = model.intVar("lateness", 0, most);
        model.scalar(late.toArray(IntVar[]::new), points.stream().mapToInt(Integer::intValue).toArray(), "=", lateness)
                .post();
        int first = problem.weights().endMinute() * horizon + 1;
        IntVar cost = model.intVar("cost", 0, most * first);
        model.scalar(new IntVar[] {lateness, last}, new int[] {first, problem.weights().endMinute()}, "=", cost).post();

        var best = least(cost, mostNodes, lateness, last);
        return new Cost(best.getIntVal(lateness), (long) best.getIntVal(last) * problem.weights().endMinute());
    }

    private IntVar lastEnd() {
        IntVar last = model.intVar("last end", 0, horizon);
        model.max(last, end.values().toArray(IntVar[]::new)).post();
        return last;
    }

    private Solution least(IntVar objective, long mostNodes, IntVar... results) {
        Solver solver = model.getSolver();
        List<BoolVar> decisions = new ArrayList<>(choices);
        decisions.addAll(orders);
        solver.setSearch(Search.domOverWDegSearch(decisions.toArray(IntVar[]::new)),
                Search.minDomLBSearch(start.values().toArray(IntVar[]::new)),
                Search.minDomLBSearch(end.values().toArray(IntVar[]::new)),
                Search.inputOrderLBSearch(results));
        solver.limitNode(mostNodes);
        var best = solver.findOptimalSolution(objective, false);
        if (best == null || solver.isStopCriterionMet()) {
            throw new AssertionError("no proof: " + (best == null ? "no plan found" : "stopped") + " after "
                    + solver.getNodeCount() + " decisions");
        }
        return best;
    }
}
