package crumbclock.formats.problem;

import crumbclock.domain.change.Change;
import crumbclock.domain.change.KitchenChange;
import crumbclock.domain.change.KitchenChanges;
import crumbclock.domain.change.OrderChange;
import crumbclock.domain.change.WorkChange;
import crumbclock.domain.change.WorkChange.StepTime;
import crumbclock.domain.change.WorkChange.StepWindow;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.work.Step;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.methods.Expanded;
import crumbclock.methods.Expander;
import crumbclock.methods.ExpansionFault;
import crumbclock.methods.Method;
import crumbclock.methods.StepTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * A problem that was read and not yet turned into steps: the place where changes apply, so that methods work on what was
 * changed as on anything else. Never changed itself; each change gives a new one.
 *
 * @param bufferMinutes wished buffer of orders that say none
 * @param batches       those that no order takes anything from, although one did, are not made
 * @param fixed         steps that have happened; those of an order that is dropped go with it
 * @param times         changes of steps, in the order in which they apply
 */
public record ProblemDraft(String title, ProblemCalendar calendar, int bufferMinutes, Kitchen kitchen, Map<String, Method> methods,
        List<BatchRequest> batches, List<OrderRequest> orders, Weights weights, List<FixedStep> fixed, List<WorkChange> times) {

    public ProblemDraft {
        methods = java.util.Collections.unmodifiableMap(new TreeMap<>(methods));
        batches = List.copyOf(batches);
        orders = List.copyOf(orders);
        fixed = List.copyOf(fixed);
        times = List.copyOf(times);
    }

    /**
     * The same with one change.
     *
     * @throws IllegalArgumentException when the change names something that is not there, or an id that is taken
     */
    public ProblemDraft with(Change change) {
        if (change instanceof OrderChange order) {
            return withOrders(OrderChanges.changed(orders, order));
        }
        if (change instanceof KitchenChange part) {
            return new ProblemDraft(title, calendar, bufferMinutes, KitchenChanges.changed(kitchen, part), methods, batches, orders,
                    weights, fixed, times);
        }
        if (change instanceof WorkChange.ComponentInStock stock) {
            return withOrders(OrderChanges.inStock(orders, stock, methods));
        }
        if (change instanceof WorkChange.BatchInStock stock) {
            return withBatches(OrderChanges.inStock(batches, stock));
        }
        if (change instanceof WorkChange.BatchAdded added) {
            return withBatches(OrderChanges.added(batches, added));
        }
        List<WorkChange> more = new ArrayList<>(times);
        more.add((WorkChange) change);
        return new ProblemDraft(title, calendar, bufferMinutes, kitchen, methods, batches, orders, weights, fixed, more);
    }

    /** The same with all changes, one after the other. */
    public ProblemDraft with(List<? extends Change> changes) {
        var changed = this;
        for (Change change : changes) {
            changed = changed.with(change);
        }
        return changed;
    }

    /** The same under another title. */
    public ProblemDraft titled(String other) {
        return new ProblemDraft(other, calendar, bufferMinutes, kitchen, methods, batches, orders, weights, fixed, times);
    }

    /** The same with steps that have happened. */
    public ProblemDraft pinned(List<FixedStep> steps) {
        return new ProblemDraft(title, calendar, bufferMinutes, kitchen, methods, batches, orders, weights, steps, times);
    }

    private ProblemDraft withBatches(List<BatchRequest> changed) {
        return new ProblemDraft(title, calendar, bufferMinutes, kitchen, methods, changed, orders, weights, fixed, times);
    }

    private ProblemDraft withOrders(List<OrderRequest> changed) {
        Set<String> noLonger = new TreeSet<>(batchesOf(orders));
        noLonger.removeAll(batchesOf(changed));
        var stillMade = batches.stream().filter(batch -> !noLonger.contains(batch.id())).toList();
        return new ProblemDraft(title, calendar, bufferMinutes, kitchen, methods, stillMade, changed, weights, fixed, times);
    }

    private static Set<String> batchesOf(List<OrderRequest> orders) {
        return orders.stream().flatMap(order -> order.cakes().stream()).map(CakeRequest::batches)
                .flatMap(used -> used.values().stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What the methods make of it, with all changes of steps. */
    public Expanded expanded(Consumer<ExpansionFault> faults) {
        Set<String> poolIds = kitchen.pools().stream().map(Pool::id).collect(Collectors.toCollection(TreeSet::new));
        var work = Expander.expand(orders, batches, methods, poolIds, faults);
        for (WorkChange change : times) {
            if (change instanceof StepTime time) {
                work = StepTimes.timed(work, time);
            } else if (change instanceof StepWindow window) {
                work = StepTimes.limited(work, window);
            }
        }
        return work;
    }

    /**
     * The problem that it is.
     *
     * @param faults told of everything that cannot be made; when there is one, nothing should be planned
     */
    public Problem problem(Consumer<ExpansionFault> faults) {
        var work = expanded(faults);
        AllergenLimit.fault(kitchen, work.orders().stream().flatMap(order -> order.cakes().stream()).toList(), work.steps()).ifPresent(faults);
        Set<String> stepIds = work.steps().stream().map(Step::id).collect(Collectors.toSet());
        var happened = fixed.stream().filter(step -> stepIds.contains(step.step().stepId())).toList();
        return new Problem(title, calendar.clock(), kitchen, work.orders(), work.batches(), work.steps(), work.waits(),
                work.coldLimits(), work.lifeLimits(), work.freshnessWishes(), happened, weights)
                .withRepairs(work.repairs());
    }
}
