package crumbclock.domain.problem;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One planning problem, read and checked: all that engine and audit need.
 *
 * <p>Every step belongs to a cake of an order or to a batch. A hand-over step belongs to the order: its
 * {@code ownerId} is the order's id.
 *
 * @param steps in a fixed order: orders as read, in each the cakes as read, in each the steps as the method has them
 * @param kept  the plan that people already have; {@link KeptPlan#NONE} when there is none
 * @param repairs what could be done on the day about waits that were missed; their steps are among the steps only when it is done
 */
public record Problem(String title, ProblemClock clock, Kitchen kitchen, List<Order> orders, List<Batch> batches,
        List<Step> steps, List<Wait> waits, List<ColdLimit> coldLimits, List<LifeLimit> lifeLimits,
        List<FreshnessWish> freshnessWishes, List<FixedStep> fixedSteps, Weights weights,
        KeptPlan kept, List<Repair> repairs) {

    public Problem {
        orders = List.copyOf(orders);
        batches = List.copyOf(batches);
        steps = List.copyOf(steps);
        waits = List.copyOf(waits);
        coldLimits = List.copyOf(coldLimits);
        lifeLimits = List.copyOf(lifeLimits);
        freshnessWishes = List.copyOf(freshnessWishes);
        fixedSteps = List.copyOf(fixedSteps);
        repairs = List.copyOf(repairs);
    }

    /** A problem that nobody has a plan for yet. */
    public Problem(String title, ProblemClock clock, Kitchen kitchen, List<Order> orders, List<Batch> batches,
            List<Step> steps, List<Wait> waits, List<ColdLimit> coldLimits, List<LifeLimit> lifeLimits,
            List<FreshnessWish> freshnessWishes, List<FixedStep> fixedSteps, Weights weights) {
        this(title, clock, kitchen, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes, fixedSteps,
                weights, KeptPlan.NONE, List.of());
    }

    /** The same in another kitchen. */
    public Problem withKitchen(Kitchen other) {
        return new Problem(title, clock, other, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, kept, repairs);
    }

    /** The same with the orders asked for otherwise. */
    public Problem withOrders(List<Order> others) {
        return new Problem(title, clock, kitchen, others, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, kept, repairs);
    }

    /** The same with other steps. */
    public Problem withSteps(List<Step> others) {
        return new Problem(title, clock, kitchen, orders, batches, others, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, kept, repairs);
    }

    /** The same with each step changed. */
    public Problem withEachStep(UnaryOperator<Step> change) {
        return withSteps(steps.stream().map(change).toList());
    }

    /** The same with other waits. */
    public Problem withWaits(List<Wait> others) {
        return new Problem(title, clock, kitchen, orders, batches, steps, others, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, kept, repairs);
    }

    /** The same with other limits of what keeps how long. */
    public Problem withLimits(List<ColdLimit> cold, List<LifeLimit> lives) {
        return new Problem(title, clock, kitchen, orders, batches, steps, waits, cold, lives, freshnessWishes,
                fixedSteps, weights, kept, repairs);
    }

    /** The same with other steps recorded or pinned. */
    public Problem withFixedSteps(List<FixedStep> fixed) {
        return new Problem(title, clock, kitchen, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixed, weights, kept, repairs);
    }

    /** The same with other repairs that could be done. */
    public Problem withRepairs(List<Repair> others) {
        return new Problem(title, clock, kitchen, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, kept, others);
    }

    /** The same with a plan to keep to. */
    public Problem withKept(KeptPlan plan) {
        return new Problem(title, clock, kitchen, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, weights, plan, repairs);
    }

    /** The same with other points. */
    public Problem withWeights(Weights others) {
        return new Problem(title, clock, kitchen, orders, batches, steps, waits, coldLimits, lifeLimits, freshnessWishes,
                fixedSteps, others, kept, repairs);
    }

    /** All cakes of all orders, as read. */
    public List<Cake> cakes() {
        return orders.stream().flatMap(order -> order.cakes().stream()).toList();
    }
}
