package crumbclock.app.replan;

import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Wait;
import java.util.ArrayDeque;
import java.util.Comparator;
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

    Redo(Situation situation, String orderId) {
        this.situation = situation;
        this.graph = new WorkGraph(situation.problem());
        this.orderId = orderId;
    }

    /** Repairs of waits that have begun; of those that end at the step, or before it, when one is named. */
    List<String> repairs(String stepWithoutPlace) {
        List<Wait> waits = waits(stepWithoutPlace);
        return Repairs.open(situation.problem(), situation.happened()).stream().filter(repair -> !repair.missed().contains(Repair.Missed.REST_TOO_SHORT)
                && waits.stream().anyMatch(repair::isOf)).map(Repair::id).toList();
    }

    /**
     * Steps that are to be done again, the earliest of them with what made them too old.
     *
     * @param stepWithoutPlace the step for which no place is found; empty when that is not known
     */
    Set<String> steps(String stepWithoutPlace) {
        List<Wait> waits = waits(stepWithoutPlace);
        Set<String> again = new LinkedHashSet<>();
        if (stepWithoutPlace.isEmpty()) {
            waits.stream().min(Comparator.comparingLong(this::lastMinute)).ifPresent(wait -> again.add(wait.fromStepId()));
        } else {
            waits.forEach(wait -> again.add(wait.fromStepId()));
        }
        Deque<String> open = new ArrayDeque<>(again);
        while (!open.isEmpty()) {
            for (Wait wait : graph.before(open.remove())) {
                if (isOwn(wait) && wait.hasMost() && situation.happened().containsKey(wait.fromStepId()) && lastMinute(wait) < situation.now()
                        && again.add(wait.fromStepId())) {
                    open.add(wait.fromStepId());
                }
            }
        }
        return again;
    }

    /** Waits within a cake of the order that have begun, and must end in time. */
    private List<Wait> waits(String stepWithoutPlace) {
        Set<String> toCome = stepWithoutPlace.isEmpty() ? situation.toDo() : toCome(stepWithoutPlace);
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
