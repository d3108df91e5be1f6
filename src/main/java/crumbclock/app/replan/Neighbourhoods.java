package crumbclock.app.replan;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Sets of steps that may be planned anew while all else is pinned: what moved, what is late, then one stretch of time after the other. */
final class Neighbourhoods {

    private static final int STRETCH = 120;

    private final Candidate best;
    private final OldPlan old;
    private final int now;

    Neighbourhoods(Candidate best, OldPlan old, int now) {
        this.best = best;
        this.old = old;
        this.now = now;
    }

    /** Those first that the change concerns. */
    List<Set<String>> all() {
        List<Set<String>> all = new ArrayList<>();
        Set<String> bad = new LinkedHashSet<>();
        for (Outcome outcome : best.timetable().outcomes()) {
            if (!outcome.possible() || outcome.lateMinutes() > 0) {
                bad.add(outcome.orderId());
            }
        }
        Set<String> moved = new LinkedHashSet<>();
        for (PlacedStep step : best.timetable().steps()) {
            if (step.start() >= now && old.find(step.stepId()).filter(before -> before.start() == step.start()).isEmpty()) {
                moved.add(step.stepId());
            }
        }
        all.add(ofSameOrders(best.situation(), moved));
        if (!bad.isEmpty()) {
            Set<String> late = new LinkedHashSet<>();
            best.situation().toDo().stream().filter(id -> best.situation().orderOf(id).filter(bad::contains).isPresent()).forEach(late::add);
            late.addAll(between(best.timetable(), now, now + STRETCH));
            all.add(late);
        }
        for (int from = now; from <= best.problem().clock().horizonMinutes(); from += STRETCH) {
            Set<String> stretch = new LinkedHashSet<>(between(best.timetable(), from, from + STRETCH));
            stretch.addAll(between(old.timetable(), from, from + STRETCH));
            if (!stretch.isEmpty()) {
                all.add(stretch);
            }
        }
        return all;
    }

    private static Set<String> between(Timetable timetable, int from, int until) {
        Set<String> between = new LinkedHashSet<>();
        timetable.steps().stream().filter(step -> step.start() < until && step.end() > from).map(PlacedStep::stepId).forEach(between::add);
        return between;
    }

    private static Set<String> ofSameOrders(Situation situation, Set<String> stepIds) {
        Set<String> orders = new LinkedHashSet<>();
        stepIds.forEach(id -> situation.orderOf(id).ifPresent(orders::add));
        Set<String> steps = new LinkedHashSet<>(stepIds);
        situation.toDo().stream().filter(id -> situation.orderOf(id).filter(orders::contains).isPresent()).forEach(steps::add);
        return steps;
    }
}
