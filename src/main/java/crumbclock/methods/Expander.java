package crumbclock.methods;

import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Requests and methods become steps, waits and limits. Nothing here depends on when or by whom: that is the
 * engine's part. Equal requests give equal results, in the order of the requests.
 */
public final class Expander {

    private final Map<String, Method> methods;
    private final Set<String> poolIds;
    private final Consumer<ExpansionFault> faults;
    private final List<Step> steps = new ArrayList<>();
    private final List<Wait> waits = new ArrayList<>();
    private final List<ColdLimit> coldLimits = new ArrayList<>();
    private final List<LifeLimit> lifeLimits = new ArrayList<>();
    private final List<FreshnessWish> wishes = new ArrayList<>();
    private final List<Repair> repairs = new ArrayList<>();
    private final Map<String, String> batchEnds = new LinkedHashMap<>();
    private final Map<String, Stock.BatchContents> batchContents = new LinkedHashMap<>();
    private final Set<String> batchesMade = new TreeSet<>();
    private final Map<String, Expansion> cakes = new LinkedHashMap<>();
    private final Map<String, List<String>> batchesOf = new LinkedHashMap<>();

    private Expander(Map<String, Method> methods, Set<String> poolIds, Consumer<ExpansionFault> faults) {
        this.methods = methods;
        this.poolIds = poolIds;
        this.faults = faults;
    }

    /**
     * Expands everything that can be; what cannot is told as a fault and left out, and then nothing should be planned.
     *
     * @param orders      ids of orders, cakes and batches are unique among all of them
     * @param methodsById every method that a request may name
     * @param poolIds     equipment pools in the kitchen
     * @param faults      told of every fault, in the order of discovery
     */
    public static Expanded expand(List<OrderRequest> orders, List<BatchRequest> batches,
            Map<String, Method> methodsById, Set<String> poolIds, Consumer<ExpansionFault> faults) {
        var expander = new Expander(methodsById, poolIds, faults);
        batches.forEach(expander::noteContents);
        batches.stream().filter(batch -> !batch.inStock()).forEach(batch -> expander.addBatch(batch, orders));
        orders.forEach(expander::addOrder);
        return expander.finish(orders, batches);
    }

    private void noteContents(BatchRequest batch) {
        Optional.ofNullable(methods.get(batch.methodId())).filter(method -> method.kind() == MethodKind.BATCH)
                .ifPresent(method -> batchContents.put(batch.id(), Stock.contents(batch, method,
                        Choices.of(method, batch.options(), Map.of(), ignored -> { }))));
    }

    private void addBatch(BatchRequest batch, List<OrderRequest> orders) {
        Consumer<String> fault = message -> faults.accept(new ExpansionFault("", batch.id(), message));
        var method = method(batch.methodId(), MethodKind.BATCH, fault);
        if (method == null) {
            return;
        }
        int amount = batch.amount();
        var freeFrom = new TreeSet<>(batch.freeFrom());
        boolean named = false;
        boolean taken = false;
        for (OrderRequest order : orders) {
            for (CakeRequest cake : order.cakes()) {
                named |= cake.batches().containsValue(batch.id());
                var components = components(order, cake, batch.id());
                freeFrom.addAll(components.isEmpty() ? Set.of() : cake.freeFrom());
                amount += batch.amount() == 0 ? share(cake, components) : 0;
                taken |= !components.isEmpty();
            }
        }
        if (named && !taken) {
            return; // all that it would go into is there already
        }
        batchesMade.add(batch.id());
        var choices = Choices.of(method, batch.options(), Map.of(), fault);
        var work = new WorkOrder(batch.id(), method, Scope.ofBatch(amount), choices, batch.contains(),
                freeFrom, batch.earliest(), "", Map.of(), Stock.NONE, poolIds);
        var expansion = add(work, fault);
        if (!expansion.made().isEmpty()) {
            batchEnds.put(batch.id(), expansion.lastStepId());
        }
    }

    /** What this cake takes from the batch; unknown methods and components are told when the cake's turn comes. */
    private List<Section> components(OrderRequest order, CakeRequest cake, String batchId) {
        var method = methods.get(cake.methodId());
        if (method == null || !cake.batches().containsValue(batchId)) {
            return List.of();
        }
        var stock = Stock.of(cake, method, choices(order, cake, method, ignored -> { }), batchContents, ignored -> { });
        return method.sections().stream()
                .filter(section -> batchId.equals(cake.batches().get(section.id())) && !stock.holds(section)).toList();
    }

    private static int share(CakeRequest cake, List<Section> components) {
        return components.stream().filter(section -> section.batch() != null && section.batch().amount() != null)
                .mapToInt(section -> scope(cake).amount(section.batch().amount())).sum();
    }

    private static Choices choices(OrderRequest order, CakeRequest cake, Method method, Consumer<String> fault) {
        return Choices.of(method, cake.options(), Map.of("tiers", cake.tiers().size() > 1 ? "several" : "one",
                "message", cake.message().isBlank() ? "no" : "yes", "hand-over", HandOverMaker.option(order.way())), fault);
    }

    private void addOrder(OrderRequest order) {
        order.cakes().forEach(cake -> addCake(order, cake));
        HandOverMaker.step(order, poolIds).ifPresent(steps::add);
    }

    private void addCake(OrderRequest order, CakeRequest cake) {
        Consumer<String> fault = message -> faults.accept(new ExpansionFault(order.id(), cake.id(), message));
        var method = method(cake.methodId(), MethodKind.CAKE, fault);
        boolean sized = !cake.tiers().isEmpty() || cake.pieces() > 1;
        if (!sized) {
            fault.accept("has no tier; expected the size of at least one, or a number of pieces");
        }
        if (method == null || !sized) {
            return;
        }
        var choices = choices(order, cake, method, fault);
        var stock = Stock.of(cake, method, choices, batchContents, fault);
        var work = new WorkOrder(cake.id(), method, scope(cake), choices, cake.contains(), cake.freeFrom(),
                order.earliest(), HandOverMaker.id(order), batchEnds(cake, method, stock, fault),
                stock, poolIds);
        var expansion = add(work, fault);
        if (expansion.made().isEmpty()) {
            fault.accept("method " + method.id() + " makes no step with these options");
            return;
        }
        cakes.put(cake.id(), expansion);
        batchesOf.put(cake.id(), work.batchEnds().keySet().stream().map(cake.batches()::get).distinct().toList());
        var limits = new Limits(work, expansion);
        lifeLimits.addAll(limits.lives());
        coldLimits.addAll(limits.coldLimits());
        wishes.addAll(limits.wishes(order.id()));
        if (!work.handOverId().isEmpty()) {
            waits.add(HandOverMaker.wait(order, expansion.lastStepId()));
        }
    }

    private Expansion add(WorkOrder work, Consumer<String> fault) {
        var expansion = Expansion.of(work, fault);
        var links = Links.of(work, expansion);
        steps.addAll(expansion.steps());
        waits.addAll(links.waits());
        lifeLimits.addAll(links.batchLives());
        repairs.addAll(Repairs.of(work, expansion, links.waits()));
        return expansion;
    }

    private Method method(String id, MethodKind kind, Consumer<String> fault) {
        var method = methods.get(id);
        if (method == null || method.kind() != kind) {
            var known = new TreeSet<String>();
            methods.values().stream().filter(m -> m.kind() == kind).forEach(m -> known.add(m.id()));
            fault.accept("read method \"" + id + "\"; expected one of " + String.join(", ", known));
            return null;
        }
        var problems = MethodCheck.problems(method);
        problems.forEach(fault);
        return problems.isEmpty() ? method : null;
    }

    private static Scope scope(CakeRequest cake) {
        return cake.tiers().isEmpty() ? Scope.ofPieces(cake.pieces()) : new Scope(cake.tiers(), cake.pieces(), 0);
    }

    /** Section → last step of its batch, for the components that come from one. */
    private Map<String, String> batchEnds(CakeRequest cake, Method method, Stock stock, Consumer<String> fault) {
        var ends = new TreeMap<String, String>();
        cake.batches().forEach((component, batchId) -> {
            if (stock.contents().containsKey(component) || batchId.equals(CakeRequest.IN_STOCK)) {
                return;
            }
            boolean shared = method.sections().stream().anyMatch(s -> s.id().equals(component) && s.batch() != null);
            if (!shared) {
                fault.accept("read component \"" + component + "\"; expected one of " + String.join(", ",
                        method.sections().stream().filter(s -> s.batch() != null).map(Section::id).toList())
                        + " of method " + method.id());
            } else if (!batchEnds.containsKey(batchId)) {
                fault.accept("component " + component + ": read batch \"" + batchId + "\"; expected one of "
                        + String.join(", ", batchEnds.keySet()));
            } else {
                ends.put(component, batchEnds.get(batchId));
            }
        });
        return ends;
    }

    private Expanded finish(List<OrderRequest> orders, List<BatchRequest> batches) {
        var contents = Contents.of(steps, waits);
        if (!contents.inCircle().isEmpty()) {
            faults.accept(new ExpansionFault("", "", "these steps wait for each other: "
                    + String.join(", ", contents.inCircle())));
        }
        var handOvers = new TreeSet<String>();
        orders.forEach(order -> handOvers.add(HandOverMaker.id(order)));
        // a hand-over carries closed boxes: no allergen of theirs meets anything
        var filled = steps.stream().map(step -> handOvers.contains(step.id()) ? step : contents.fill(step)).toList();
        var checked = new FreeFromCheck(contents, faults);
        batches.forEach(batch -> checked.check("", batch.id(), filled));
        orders.forEach(order -> order.cakes().forEach(cake -> checked.check(order.id(), cake.id(), filled)));
        return new Expanded(orders.stream().map(order -> order(order, contents)).toList(),
                batches.stream().filter(batch -> batchesMade.contains(batch.id()))
                        .map(batch -> new Batch(batch.id(), batch.title())).toList(),
                filled, waits,
                coldLimits, lifeLimits, wishes, repairs.stream().map(repair -> filled(repair, contents)).toList());
    }

    /** A repair brings nothing in; what the thing contains by then, it handles. */
    private static Repair filled(Repair repair, Contents contents) {
        return new Repair(repair.fromStepId(), repair.toStepId(), repair.missed(),
                repair.steps().stream().map(step -> step.withContains(contents.in(repair.fromStepId()))).toList(), repair.waits());
    }

    private Order order(OrderRequest order, Contents contents) {
        var made = order.cakes().stream().filter(cake -> cakes.containsKey(cake.id()))
                .map(cake -> cake(order, cake, contents)).toList();
        return new Order(order.id(), order.title(), made, HandOverMaker.handOver(order), order.importance(),
                order.bufferWishMinutes());
    }

    private Cake cake(OrderRequest order, CakeRequest cake, Contents contents) {
        String finish = cakes.get(cake.id()).finishStepId();
        return new Cake(cake.id(), order.id(), cake.title(), cake.servings(), cake.message(), contents.in(finish),
                cake.freeFrom(), finish, batchesOf.get(cake.id()));
    }
}
