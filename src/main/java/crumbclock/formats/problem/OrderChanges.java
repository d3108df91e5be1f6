package crumbclock.formats.problem;

import crumbclock.domain.change.OrderChange;
import crumbclock.domain.change.WorkChange.BatchAdded;
import crumbclock.domain.change.WorkChange.BatchInStock;
import crumbclock.domain.change.WorkChange.ComponentInStock;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.methods.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Applies changes to what was asked for. */
final class OrderChanges {

    private static final String SPARE = "spare";

    private OrderChanges() {
    }

    static List<OrderRequest> changed(List<OrderRequest> orders, OrderChange change) {
        List<OrderRequest> changed = new ArrayList<>(orders);
        if (change instanceof OrderChange.Added added) {
            check(orders.stream().noneMatch(order -> order.id().equals(added.order().id())), "order " + added.order().id() + " is there");
            changed.add(added.order());
        } else if (change instanceof OrderChange.Dropped dropped) {
            changed.remove(indexOf(orders, dropped.orderId()));
        } else if (change instanceof OrderChange.Replaced replaced) {
            changed.set(indexOf(orders, replaced.order().id()), replaced.order());
        }
        return changed;
    }

    private static int indexOf(List<OrderRequest> orders, String id) {
        var ids = orders.stream().map(OrderRequest::id).toList();
        check(ids.contains(id), "no order " + id);
        return ids.indexOf(id);
    }

    /** Spare layers are thawed, where the method knows how; any other component is simply there. */
    static List<OrderRequest> inStock(List<OrderRequest> orders, ComponentInStock change, Map<String, Method> methods) {
        check(orders.stream().anyMatch(order -> order.cakes().stream().anyMatch(cake -> cake.id().equals(change.cakeId()))),
                "no cake " + change.cakeId());
        return orders.stream().map(order -> new OrderRequest(order.id(), order.title(),
                order.cakes().stream().map(cake -> cake.id().equals(change.cakeId())
                        ? inStock(cake, change.component(), methods.get(cake.methodId())) : cake).toList(),
                order.way(), order.from(), order.until(), order.doorMinutes(), order.loadMinutes(), order.roadMinutes(),
                order.setUpMinutes(), order.importance(), order.earliest(), order.bufferWishMinutes())).toList();
    }

    private static CakeRequest inStock(CakeRequest cake, String component, Method method) {
        boolean knowsSpare = method.options().stream().anyMatch(option -> option.id().equals(component)
                && option.values().stream().anyMatch(value -> value.value().equals(SPARE)));
        Map<String, String> batches = new TreeMap<>(cake.batches());
        Map<String, String> options = new TreeMap<>(cake.options());
        if (knowsSpare) {
            options.put(component, SPARE);
        } else {
            batches.put(component, CakeRequest.IN_STOCK);
        }
        return new CakeRequest(cake.id(), cake.title(), cake.methodId(), cake.tiers(), cake.pieces(), cake.servings(), cake.message(),
                cake.contains(), cake.freeFrom(), batches, options);
    }

    static List<BatchRequest> inStock(List<BatchRequest> batches, BatchInStock change) {
        check(batches.stream().anyMatch(batch -> batch.id().equals(change.batchId())), "no batch " + change.batchId());
        return batches.stream().map(batch -> batch.id().equals(change.batchId())
                ? new BatchRequest(batch.id(), batch.title(), batch.methodId(), batch.amount(), batch.earliest(), batch.contains(),
                        batch.freeFrom(), batch.options(), true) : batch).toList();
    }

    static List<BatchRequest> added(List<BatchRequest> batches, BatchAdded change) {
        check(batches.stream().noneMatch(batch -> batch.id().equals(change.batch().id())), "batch " + change.batch().id() + " is there");
        List<BatchRequest> all = new ArrayList<>(batches);
        all.add(change.batch());
        return all;
    }

    private static void check(boolean holds, String complaint) {
        if (!holds) {
            throw new IllegalArgumentException(complaint);
        }
    }
}
