package crumbclock.app.reason;

import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Smaller problems out of a problem: fewer orders, or their hand-overs alone. */
final class ProblemCut {

    private ProblemCut() {
    }

    /** The problem with some of its orders, and only the batches that they use. */
    static Problem keeping(Problem problem, Predicate<Order> wanted) {
        List<Order> orders = problem.orders().stream().filter(wanted).toList();
        Set<String> owners = new HashSet<>();
        for (Order order : orders) {
            owners.add(order.id());
            for (Cake cake : order.cakes()) {
                owners.add(cake.id());
                owners.addAll(cake.batchIds());
            }
        }
        return withSteps(problem, orders, problem.steps().stream().filter(step -> owners.contains(step.ownerId())).toList());
    }

    /**
     * The problem as if all cakes were ready at its start: of each order its hand-over alone, with the people,
     * shifts and cars that there are. Cakes finish by a milestone that takes no time.
     */
    static Problem handOversOnly(Problem problem) {
        Set<String> handOvers = new HashSet<>();
        Set<String> finishes = new HashSet<>();
        for (Order order : problem.orders()) {
            handOvers.add(order.handOver().stepId());
            order.cakes().forEach(cake -> finishes.add(cake.finishStepId()));
        }
        List<Order> orders = problem.orders().stream().map(order -> new Order(order.id(), order.title(),
                order.cakes().stream().map(ProblemCut::withoutBatches).toList(), order.handOver(), order.importance(), 0))
                .toList();
        List<Step> steps = problem.steps().stream()
                .filter(step -> handOvers.contains(step.id()) || finishes.contains(step.id()))
                .map(step -> handOvers.contains(step.id()) ? step : milestone(step)).toList();
        Problem cut = withSteps(problem, orders, steps);
        return new Problem(cut.title(), cut.clock(), cut.kitchen(), orders, List.of(), steps, cut.waits(), List.of(),
                List.of(), List.of(), cut.fixedSteps().stream()
                        .filter(fixed -> !finishes.contains(fixed.step().stepId())).toList(), cut.weights());
    }

    /** All that speaks of a step goes when the step goes; equipment kept until such a step is given back at once. */
    private static Problem withSteps(Problem problem, List<Order> orders, List<Step> steps) {
        Set<String> ids = new HashSet<>();
        steps.forEach(step -> ids.add(step.id()));
        Set<String> orderIds = new HashSet<>();
        orders.forEach(order -> orderIds.add(order.id()));
        Set<String> owners = new HashSet<>();
        steps.forEach(step -> owners.add(step.ownerId()));
        return new Problem(problem.title(), problem.clock(), problem.kitchen(), orders,
                problem.batches().stream().filter(batch -> owners.contains(batch.id())).toList(),
                steps.stream().map(step -> withinReach(step, ids)).toList(),
                problem.waits().stream().filter(wait -> ids.contains(wait.fromStepId()) && ids.contains(wait.toStepId())).toList(),
                problem.coldLimits().stream().filter(limit -> ids.contains(limit.fromStepId())
                        && ids.contains(limit.toStepId()) && ids.containsAll(limit.heldStepIds())).toList(),
                problem.lifeLimits().stream().filter(limit -> ids.contains(limit.fromStepId())
                        && ids.contains(limit.toStepId()) && ids.containsAll(limit.heldStepIds())).toList(),
                problem.freshnessWishes().stream().filter(wish -> ids.contains(wish.fromStepId())
                        && orderIds.contains(wish.orderId())).toList(),
                problem.fixedSteps().stream().filter(fixed -> ids.contains(fixed.step().stepId())).toList(),
                problem.weights());
    }

    private static Step withinReach(Step step, Set<String> ids) {
        if (step.equipment().stream().allMatch(need -> ids.contains(need.untilStepId()))) {
            return step;
        }
        return step.withEquipment(step.equipment().stream()
                .map(need -> ids.contains(need.untilStepId()) ? need
                        : new EquipmentNeed(need.poolId(), need.units(), need.amount(), step.id())).toList());
    }

    private static Cake withoutBatches(Cake cake) {
        return new Cake(cake.id(), cake.orderId(), cake.title(), cake.servings(), cake.message(), cake.contains(),
                cake.freeFrom(), cake.finishStepId(), List.of());
    }

    private static Step milestone(Step step) {
        return new Step(step.id(), step.name(), step.ownerId(), step.part(), StepKind.HANDS_ON,
                Optional.of(HandsOn.NOTHING), 0, 0, Optional.empty(), Optional.empty(),
                false, List.of(), Optional.empty(), Optional.empty(), Set.of(), Set.of(), 0);
    }
}
