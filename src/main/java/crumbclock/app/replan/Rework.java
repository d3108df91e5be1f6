package crumbclock.app.replan;

import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes a shared batch again for the cakes that need more of it, while the other cakes keep what they have: a second batch
 * in the problem, smaller in proportion.
 */
final class Rework {

    private final Problem problem;
    private final String batchId;
    private final Set<String> cakeIds;
    private final String copyId;
    private final Set<String> orderIds = new LinkedHashSet<>();
    private final Map<String, String> copies = new LinkedHashMap<>();

    private Rework(Problem problem, String batchId, Set<String> cakeIds) {
        this.problem = problem;
        this.batchId = batchId;
        this.cakeIds = cakeIds;
        this.copyId = freeId();
        problem.cakes().stream().filter(cake -> cakeIds.contains(cake.id())).forEach(cake -> orderIds.add(cake.orderId()));
        for (Step step : problem.steps()) {
            if (step.ownerId().equals(batchId)) {
                copies.put(step.id(), step.id().startsWith(batchId) ? copyId + step.id().substring(batchId.length())
                        : step.id() + BatchAgain.AGAIN);
            }
        }
    }

    /** The problem with another batch for these cakes; they wait for it and no longer for the first. */
    static Problem again(Problem problem, String batchId, Set<String> cakeIds) {
        return new Rework(problem, batchId, cakeIds).made();
    }

    private String freeId() {
        Set<String> taken = new LinkedHashSet<>();
        problem.batches().forEach(batch -> taken.add(batch.id()));
        problem.cakes().forEach(cake -> taken.add(cake.id()));
        return BatchAgain.freeId(batchId, taken);
    }

    private Problem made() {
        List<Batch> batches = new ArrayList<>(problem.batches());
        problem.batches().stream().filter(batch -> batch.id().equals(batchId))
                .forEach(batch -> batches.add(new Batch(copyId, batch.title() + ", made again")));
        List<Step> steps = new ArrayList<>(problem.steps());
        problem.steps().stream().filter(step -> copies.containsKey(step.id())).forEach(step -> steps.add(copy(step)));
        return new Problem(problem.title(), problem.clock(), problem.kitchen(), problem.orders().stream().map(this::order).toList(),
                batches, steps, waits(steps), problem.coldLimits().stream().map(this::cold).toList(),
                problem.lifeLimits().stream().map(this::life).toList(),
                problem.freshnessWishes().stream().map(this::wish).toList(), problem.fixedSteps(), problem.weights(),
                problem.kept(), problem.repairs());
    }

    private Step copy(Step step) {
        long users = problem.cakes().stream().filter(cake -> cake.batchIds().contains(batchId)).count();
        List<EquipmentNeed> needs = step.equipment().stream().map(need -> new EquipmentNeed(need.poolId(), need.units(),
                (int) ((need.amount() * (long) cakeIds.size() + users - 1) / Math.max(1, users)),
                copies.getOrDefault(need.untilStepId(), need.untilStepId()))).toList();
        return step.called(copies.get(step.id()), copyId).withEquipment(needs);
    }

    private Order order(Order order) {
        return new Order(order.id(), order.title(), order.cakes().stream().map(this::cake).toList(), order.handOver(),
                order.importance(), order.bufferWishMinutes());
    }

    private Cake cake(Cake cake) {
        if (!cakeIds.contains(cake.id())) {
            return cake;
        }
        return new Cake(cake.id(), cake.orderId(), cake.title(), cake.servings(), cake.message(), cake.contains(),
                cake.freeFrom(), cake.finishStepId(),
                cake.batchIds().stream().map(id -> id.equals(batchId) ? copyId : id).toList());
    }

    private List<Wait> waits(List<Step> steps) {
        Map<String, String> ownerOf = new LinkedHashMap<>();
        steps.forEach(step -> ownerOf.put(step.id(), step.ownerId()));
        List<Wait> waits = new ArrayList<>();
        for (Wait wait : problem.waits()) {
            boolean from = copies.containsKey(wait.fromStepId());
            boolean to = copies.containsKey(wait.toStepId());
            boolean taken = from && !to && cakeIds.contains(ownerOf.get(wait.toStepId()));
            if (!taken) {
                waits.add(wait);
            }
            if (taken || to) {
                waits.add(new Wait(copies.getOrDefault(wait.fromStepId(), wait.fromStepId()),
                        copies.getOrDefault(wait.toStepId(), wait.toStepId()), wait.leastMinutes(), wait.mostMinutes()));
            }
        }
        return waits;
    }

    private boolean concerns(String ownerId) {
        return cakeIds.contains(ownerId) || orderIds.contains(ownerId);
    }

    private String now(String stepId) {
        return copies.getOrDefault(stepId, stepId);
    }

    private ColdLimit cold(ColdLimit limit) {
        return !concerns(limit.ownerId()) ? limit : new ColdLimit(limit.id(), limit.name(), limit.ownerId(), now(limit.fromStepId()),
                now(limit.toStepId()), limit.heldStepIds().stream().map(this::now).toList(), limit.mostMinutesOut());
    }

    private LifeLimit life(LifeLimit limit) {
        return !concerns(limit.ownerId()) ? limit : new LifeLimit(limit.id(), limit.name(), limit.ownerId(), now(limit.fromStepId()),
                now(limit.toStepId()), limit.heldStepIds().stream().map(this::now).toList(), limit.lifeMinutes());
    }

    private FreshnessWish wish(FreshnessWish wish) {
        return orderIds.contains(wish.orderId()) ? new FreshnessWish(now(wish.fromStepId()), wish.orderId(), wish.wishMinutes()) : wish;
    }
}
