package crumbclock.app.replan;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Finds what has to be made again: what somebody says is spoiled, and what was in an oven that went off. */
final class Losses {

    private final OldPlan old;
    private final int now;
    private final Set<String> batchIds = new LinkedHashSet<>();
    /** Minute from which on a step's work is lost, by step. */
    private final Map<String, Integer> lostAt = new LinkedHashMap<>();
    private final List<BatchAgain> again = new ArrayList<>();
    private Problem problem;
    private WorkGraph graph;

    Losses(Problem problem, OldPlan old, int now) {
        this.problem = problem;
        this.old = old;
        this.now = now;
        this.graph = new WorkGraph(problem);
        problem.batches().forEach(batch -> batchIds.add(batch.id()));
    }

    /** The problem with batches for what must be made again. */
    Problem problem() {
        return problem;
    }

    /** Batches that were added for that, in their order. */
    List<BatchAgain> again() {
        return List.copyOf(again);
    }

    Map<String, Integer> lostAt() {
        return lostAt;
    }

    void take(DayLog log, Consumer<DayNote> notes) {
        List<Loss> losses = new ArrayList<>();
        for (StepEvent event : log.steps()) {
            if (event.word() == DayWord.SPOILED || event.word() == DayWord.REDO) {
                int minute = event.isTimed() ? event.minute() : now;
                event.stepIds().forEach(id -> losses.add(new Loss(event.line(), id, minute, event.word() == DayWord.SPOILED)));
            }
        }
        log.kitchen().forEach(event -> inTheOven(event, log, losses, notes));
        take(losses);
    }

    /** A bake that runs when its oven goes off is lost, unless somebody recorded it as done later. */
    private void inTheOven(KitchenEvent event, DayLog log, List<Loss> losses, Consumer<DayNote> notes) {
        int at = event.when().start();
        if (at > now || event.kind() != KitchenEvent.Kind.OVEN_DEAD && event.kind() != KitchenEvent.Kind.POWER_CUT) {
            return;
        }
        var records = new Records(log.steps(), old, now, Map.of(), note -> { });
        for (Step step : problem.steps()) {
            var planned = old.find(step.id());
            if (step.oven().isEmpty() || planned.isEmpty()
                    || event.kind() == KitchenEvent.Kind.OVEN_DEAD && !planned.get().cavityId().equals(event.id())) {
                continue;
            }
            int start = records.started(step.id()).orElse(planned.get().start());
            int end = records.done(step.id()).orElse(start + planned.get().end() - planned.get().start() + records.slower(step.id()));
            if (start < at && at < end && records.done(step.id()).isEmpty()) {
                losses.add(new Loss(event.line(), step.id(), at, true));
                notes.accept(new DayNote(event.line(), step.id() + " was in the oven then; taken as spoiled, with what went into it"));
            }
        }
    }

    /** Marks what is lost, and adds batches for what is to be made again. */
    void take(List<Loss> losses) {
        Map<String, Set<String>> again = new LinkedHashMap<>();
        Map<String, Integer> againAt = new LinkedHashMap<>();
        for (Loss loss : losses) {
            Step step = graph.step(loss.stepId());
            if (loss.line() > 0 && old.find(loss.stepId()).filter(planned -> planned.start() >= loss.minute()).isPresent()) {
                // the plan makes it again already: the line was known when it was made
                continue;
            }
            Predicate<Step> own = other -> other.ownerId().equals(step.ownerId());
            lose(loss.stepId(), loss.minute());
            Set<String> made = new LinkedHashSet<>(List.of(loss.stepId()));
            if (loss.whole()) {
                made.addAll(graph.upstream(loss.stepId(), own));
            }
            made.forEach(id -> lose(id, loss.minute()));
            boolean isBatch = batchIds.contains(step.ownerId());
            for (String id : made) {
                graph.downstream(id, other -> own.test(other) || !isBatch && isHandOver(other, step)).forEach(later -> lose(later, loss.minute()));
                for (var wait : graph.before(id)) {
                    String owner = graph.step(wait.fromStepId()).ownerId();
                    if (loss.whole() && batchIds.contains(owner) && !owner.equals(step.ownerId())) {
                        again.computeIfAbsent(owner, key -> new LinkedHashSet<>()).add(step.ownerId());
                        againAt.merge(owner, loss.minute(), Math::max);
                    }
                }
            }
        }
        again.forEach((batch, cakes) -> makeAgain(batch, cakes, againAt.get(batch)));
    }

    /** The hand-over of the order that the lost cake belongs to. */
    private boolean isHandOver(Step other, Step lost) {
        return problem.orders().stream().anyMatch(order -> other.id().equals(order.handOver().stepId())
                && order.cakes().stream().anyMatch(cake -> cake.id().equals(lost.ownerId())));
    }

    private void lose(String stepId, int minute) {
        lostAt.merge(stepId, minute, Math::max);
    }

    /** A batch whose cakes all need it anew, or that is not begun yet, is simply made later; another is made a second time. */
    void makeAgain(String batchId, Set<String> cakes, int minute) {
        List<String> steps = graph.ids().stream().filter(id -> graph.step(id).ownerId().equals(batchId)).toList();
        boolean begun = steps.stream().anyMatch(id -> old.find(id).isPresent() && old.find(id).get().start() < now);
        if (!begun) {
            return;
        }
        Set<String> users = new LinkedHashSet<>();
        problem.cakes().stream().filter(cake -> cake.batchIds().contains(batchId)).forEach(cake -> users.add(cake.id()));
        if (cakes.containsAll(users)) {
            steps.forEach(id -> lose(id, minute));
            return;
        }
        again.add(new BatchAgain(batchId, List.copyOf(cakes)));
        problem = Rework.again(problem, batchId, cakes);
        graph = new WorkGraph(problem);
        problem.batches().forEach(batch -> batchIds.add(batch.id()));
    }
}
