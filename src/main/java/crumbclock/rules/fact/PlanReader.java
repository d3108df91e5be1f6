package crumbclock.rules.fact;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Looks up every id of a timetable in its problem and lays out the facts. */
final class PlanReader {

    private final Problem problem;
    private final Timetable timetable;
    private final Map<String, Step> stepById = new LinkedHashMap<>();
    private final Map<String, TimedStep> timedById = new LinkedHashMap<>();
    private final List<TimedStep> timedSteps = new ArrayList<>();
    private final List<Object> facts = new ArrayList<>();

    PlanReader(Problem problem, Timetable timetable) {
        this.problem = problem;
        this.timetable = timetable;
        problem.steps().forEach(step -> stepById.put(step.id(), step));
        readSteps();
        readProblem();
        readKitchen();
        facts.addAll(new WorkReader(problem, timedSteps).facts());
        facts.addAll(new PlaceReader(problem, timetable, stepById, timedById).facts());
        facts.addAll(new OrderReader(problem, timetable, timedById).facts());
    }

    List<TimedStep> timedSteps() {
        return timedSteps;
    }

    List<Object> facts() {
        return facts;
    }

    private void readSteps() {
        for (PlacedStep placed : timetable.steps()) {
            Step step = stepById.get(placed.stepId());
            if (step == null) {
                facts.add(new Stray(Rule.R17, placed.stepId(), "", TimedStep.spanOf(placed),
                        "the timetable has a step that the problem does not know"));
                continue;
            }
            if (FarMinutes.isFar(placed.start()) || FarMinutes.isFar(placed.end())) {
                facts.add(new Stray(Rule.R17, step.id(), "", new Span(0, 0),
                        "is placed at a minute that no calendar reaches, which is as good as not placed"));
                continue;
            }
            var timed = new TimedStep(step, placed);
            timedSteps.add(timed);
            timedById.putIfAbsent(step.id(), timed);
        }
    }

    private void readProblem() {
        facts.add(problem.weights());
        facts.add(problem.kept());
        facts.addAll(problem.kept().steps());
        facts.addAll(problem.steps());
        facts.addAll(problem.waits());
        facts.addAll(problem.coldLimits());
        facts.addAll(problem.lifeLimits());
        facts.addAll(problem.freshnessWishes());
        facts.addAll(problem.fixedSteps());
        facts.addAll(problem.orders());
        facts.addAll(problem.cakes());
        facts.addAll(timetable.outcomes());
        facts.addAll(timetable.cleanings());
        facts.addAll(timetable.touches());
        facts.addAll(timetable.pans());
        facts.addAll(timetable.placements());
    }

    private void readKitchen() {
        var kitchen = problem.kitchen();
        facts.addAll(kitchen.cavities());
        facts.addAll(kitchen.stores());
        facts.addAll(kitchen.surfaces());
        facts.addAll(kitchen.pools());
        facts.add(new Opening(SpanSet.of(kitchen.opening()), problem.clock().horizonMinutes()));
        kitchen.people().forEach(person -> facts.add(Roster.of(person)));
        List<Span> days = problem.clock().days();
        for (int day = 0; day < days.size(); day++) {
            facts.add(new Day(day, days.get(day)));
        }
        for (Cavity cavity : kitchen.cavities()) {
            for (int rack = 0; rack < cavity.racks().size(); rack++) {
                facts.add(new RackSpot(cavity, rack, cavity.racks().get(rack)));
            }
        }
        int goods = 0;
        for (Store store : kitchen.stores()) {
            for (int shelf = 0; shelf < store.shelves().size(); shelf++) {
                facts.add(new ShelfSpot(store, shelf, store.shelves().get(shelf)));
                for (Goods there : store.shelves().get(shelf).goods()) {
                    facts.add(goodsOn(store, store.shelves().get(shelf), there, --goods));
                }
            }
        }
    }

    /** Goods are numbered downward from −1, pieces of the plan upward from 0. */
    private static OnShelf goodsOn(Store store, Shelf shelf, Goods goods, int no) {
        var shape = new Shape(false, goods.xMm(), goods.yMm(), goods.widthMm(), goods.depthMm());
        return new OnShelf(no, "", 0, goods.name(), store.id(), shelf.id(), shape, goods.massGrams(), goods.when());
    }
}
