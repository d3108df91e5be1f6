package crumbclock.app.replan;

import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Wait;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How to go on with an order for which what has begun cannot be used in time any more: by a repair where its method knows one, else from
 * the last step before that which is still good.
 */
final class Redo {

    private final Situation situation;
    private final WorkGraph graph;
    private final String orderId;

    private Redo(Situation situation, String orderId) {
        this.situation = situation;
        this.graph = new WorkGraph(situation.problem());
        this.orderId = orderId;
    }

    /**
     * What helps each of the orders for which what has begun is in the way; nothing for one that the others are in the way of.
     *
     * @param rest    what is left to be planned, with nothing pinned
     * @param repairs gets the ids of repairs
     * @param losses  gets what is to be done again
     */
    static void collect(Situation situation, Problem rest, List<Order> orders, Collection<String> repairs, Collection<Loss> losses) {
        for (Order order : orders) {
            String stuck = Reasons.stepWithoutPlace(situation.problem(), rest, order.id());
            var redo = new Redo(situation, order.id());
            List<String> known = stuck.isEmpty() ? List.of() : redo.repairs(stuck);
            repairs.addAll(known);
            if (!stuck.isEmpty() && known.isEmpty()) {
                redo.steps(stuck).forEach(id -> losses.add(new Loss(0, id, situation.now(), false)));
            }
        }
    }

    /** Repairs of waits that have begun and end at the step, or before it. */
    private List<String> repairs(String stepWithoutPlace) {
        List<Wait> waits = waits(stepWithoutPlace);
        return Repairs.open(situation.problem(), situation.happened()).stream().filter(repair -> !repair.missed().contains(Repair.Missed.REST_TOO_SHORT)
                && waits.stream().anyMatch(repair::isOf)).map(Repair::id).toList();
    }

    /** Steps that are to be done again so that the step has a place: those that it waits for, with what is too old for these in turn. */
    private Set<String> steps(String stepWithoutPlace) {
        Set<String> again = new LinkedHashSet<>();
        waits(stepWithoutPlace).forEach(wait -> again.add(wait.fromStepId()));
        Deque<String> open = new ArrayDeque<>(again);
        while (!open.isEmpty()) {
            String id = open.remove();
            for (Wait wait : graph.before(id)) {
                boolean tooOld = wait.hasMost() && situation.happened().containsKey(wait.fromStepId()) && lastMinute(wait) < situation.now();
                if (isOwn(wait) && (tooOld || isBakedWith(wait.fromStepId(), id)) && again.add(wait.fromStepId())) {
                    open.add(wait.fromStepId());
                }
            }
        }
        return again;
    }

    /** Nothing that has been through the oven is turned out or cooled a second time: the part of the cake is made anew. */
    private boolean isBakedWith(String before, String id) {
        String part = graph.step(id).part();
        return graph.step(before).part().equals(part) && (graph.step(id).oven().isPresent() || graph.upstream(id,
                step -> step.part().equals(part) && step.ownerId().equals(graph.step(id).ownerId())).stream().anyMatch(one -> graph.step(one).oven().isPresent()));
    }

    /** Waits within a cake of the order that have begun, and must end in time. */
    private List<Wait> waits(String stepWithoutPlace) {
        Set<String> toCome = toCome(stepWithoutPlace);
        return situation.problem().waits().stream().filter(wait -> wait.hasMost() && isOwn(wait) && toCome.contains(wait.toStepId())
                && situation.happened().containsKey(wait.fromStepId())
                && situation.orderOf(wait.toStepId()).filter(orderId::equals).isPresent()).toList();
    }

    /** A step and all before it that is to come; of a stay that goes on, what comes next. */
    private Set<String> toCome(String id) {
        Set<String> toCome = new LinkedHashSet<>();
        if (situation.happened().containsKey(id)) {
            graph.after(id).forEach(wait -> toCome.add(wait.toStepId()));
        } else {
            toCome.addAll(graph.upstream(id, step -> !situation.happened().containsKey(step.id())));
            toCome.add(id);
        }
        return toCome;
    }

    private boolean isOwn(Wait wait) {
        return graph.step(wait.fromStepId()).ownerId().equals(graph.step(wait.toStepId()).ownerId());
    }

    private long lastMinute(Wait wait) {
        return (long) situation.happened().get(wait.fromStepId()).end() + wait.mostMinutes();
    }
}
