package crumbclock.app.replan;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts what was found for the rest of the day together with what has happened: one timetable of the whole problem. */
final class Merged {

    private final Problem whole;
    private final WorkGraph graph;
    private final OldPlan old;
    private final Map<String, Happened> happened;
    private final RestProblem rest;
    private final OldPlan found;
    private final Map<String, Integer> ends = new LinkedHashMap<>();

    private Merged(Problem whole, OldPlan old, Map<String, Happened> happened, RestProblem rest, Timetable timetable) {
        this.whole = whole;
        this.graph = new WorkGraph(whole);
        this.old = old;
        this.happened = happened;
        this.rest = rest;
        this.found = new OldPlan(timetable);
        happened.keySet().forEach(id -> ends.put(id, found.find(id + RestProblem.ON).map(PlacedStep::end).orElse(rest.end(id))));
        for (PlacedStep step : timetable.steps()) {
            ends.putIfAbsent(step.stepId(), step.end());
        }
        rest.pins().forEach((id, pin) -> ends.put(id, pin.step().end()));
    }

    /** A timetable of the whole problem, and the problem with all records in it. */
    record Whole(Problem problem, Timetable timetable) {
    }

    static Whole of(Problem whole, OldPlan old, Map<String, Happened> happened, RestProblem rest, Timetable found) {
        return new Merged(whole, old, happened, rest, found).merged();
    }

    private Whole merged() {
        List<FixedStep> facts = new ArrayList<>();
        happened.keySet().forEach(id -> facts.add(fact(id)));
        List<FixedStep> all = new ArrayList<>(facts);
        for (PlacedStep step : found.timetable().steps()) {
            String id = step.stepId();
            if (graph.holds(id) && !happened.containsKey(id) && isNeeded(graph.step(id).ownerId())) {
                all.add(rest.pins().containsKey(id) ? patched(rest.pins().get(id)) : found.record(step));
            }
        }
        List<PlacedStep> steps = new ArrayList<>(all.stream().map(FixedStep::step).toList());
        List<PlacedTouch> touches = new ArrayList<>();
        List<PanPlace> pans = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        for (FixedStep one : all) {
            touches.addAll(one.touches());
            pans.addAll(one.pans());
            placements.addAll(one.placements());
        }
        steps.sort(Comparator.comparingInt(PlacedStep::start).thenComparing(PlacedStep::stepId));
        touches.sort(Comparator.comparing(PlacedTouch::when).thenComparing(PlacedTouch::stepId));
        pans.sort(Comparator.comparing(PanPlace::stepId).thenComparingInt(PanPlace::pan));
        placements.sort(Comparator.comparing(Placement::when).thenComparing(Placement::stepId).thenComparingInt(Placement::piece));
        Timetable given = found.timetable();
        for (Pool pool : whole.kitchen().pools()) {
            steps = Pieces.dealt(steps, pool, happened.keySet());
        }
        steps = Surfaces.dealt(steps, whole, happened.keySet());
        var timetable = new Timetable(steps, touches, given.ovenRuns(), pans, placements, given.cleanings(),
                given.outcomes().stream().map(Merged::withReason).toList());
        return new Whole(whole.withFixedSteps(facts), timetable);
    }

    /** Pinned steps of an order that is not possible any more go with it; so does a batch that nobody needs. */
    private boolean isNeeded(String ownerId) {
        return whole.orders().stream().filter(order -> order.id().equals(ownerId) || order.cakes().stream()
                .anyMatch(cake -> cake.id().equals(ownerId) || cake.batchIds().contains(ownerId)))
                .anyMatch(order -> found.timetable().outcomes().stream().anyMatch(one -> one.orderId().equals(order.id()) && one.possible()));
    }

    /** Found out later; until then the audit wants one. */
    private static Outcome withReason(Outcome outcome) {
        return outcome.possible() || !outcome.reasons().isEmpty() ? outcome : new Outcome(outcome.orderId(), false, -1, -1, 0, 0,
                List.of(new Outcome.Reason(Rule.R17, "no place was found for all of its steps after what has happened")), List.of());
    }

    private FixedStep fact(String id) {
        FixedStep record = rest.record(id, ends.get(id), ends);
        if (!rest.goingOn().contains(id)) {
            return record;
        }
        List<PlacedTouch> touches = new ArrayList<>(record.touches().stream().filter(touch -> touch.at() == TouchEnd.PUT_IN).toList());
        found.timetable().touches().stream().filter(touch -> touch.stepId().equals(id + RestProblem.ON))
                .forEach(touch -> touches.add(new PlacedTouch(id, touch.at(), touch.personId(), touch.when())));
        return new FixedStep(record.step(), touches, record.pans(), record.placements());
    }

    /** What a pinned step holds until a later one ends, it holds until that ends now. */
    private FixedStep patched(FixedStep pin) {
        PlacedStep step = pin.step();
        List<UnitUse> units = step.units().stream().map(use -> {
            String last = old.givenBackBy(graph.step(step.stepId()), use);
            return new UnitUse(use.poolId(), use.unit(), use.from(),
                    last.equals(step.stepId()) ? step.end() : ends.getOrDefault(last, use.until()));
        }).toList();
        return new FixedStep(new PlacedStep(step.stepId(), step.start(), step.end(), step.work(), units, step.surfaceId(),
                step.cavityId()), pin.touches(), pin.pans(), pin.placements());
    }
}
