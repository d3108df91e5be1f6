package crumbclock.report.svg;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** All lanes of a timetable over its whole time: people, ovens, shelves, surfaces, equipment. */
final class Lanes {

    private static final String OUT_OF_USE = "out of use";

    private final PlanView view;
    private final Span always;
    private final List<Lane> lanes = new ArrayList<>();

    private Lanes(PlanView view) {
        this.view = view;
        var days = view.problem().clock().days();
        int end = view.plan().timetable().steps().stream().mapToInt(PlacedStep::end).max().orElse(0);
        this.always = new Span(days.get(0).start(), Math.max(days.get(days.size() - 1).end(), end));
    }

    static List<Lane> of(PlanView view) {
        var all = new Lanes(view);
        var kitchen = view.problem().kitchen();
        kitchen.people().forEach(all::person);
        kitchen.cavities().forEach(all::cavity);
        kitchen.stores().forEach(store -> store.shelves().forEach(shelf -> all.shelf(store, shelf)));
        kitchen.surfaces().forEach(all::surface);
        kitchen.pools().forEach(all::pool);
        return all.lanes;
    }

    private void person(Person person) {
        List<Lane.Bar> bars = new ArrayList<>();
        for (PlacedStep step : view.plan().timetable().steps()) {
            boolean away = view.findStep(step.stepId()).flatMap(Step::handsOn).filter(HandsOn::away).isPresent();
            step.work().stream().filter(work -> work.personId().equals(person.id()))
                    .flatMap(work -> work.spans().stream())
                    .forEach(span -> bars.add(bar(step.stepId(), span, away ? Lane.Look.AWAY : Lane.Look.WORK)));
        }
        view.plan().timetable().touches().stream().filter(touch -> touch.personId().equals(person.id()))
                .forEach(touch -> bars.add(bar(touch.stepId(), touch.when(),
                        touch.at() == TouchEnd.PUT_IN ? Lane.Look.PUT_IN : Lane.Look.TAKE_OUT)));
        List<Lane.Shade> shades = new ArrayList<>();
        int free = always.start();
        for (Span shift : person.shifts()) {
            addShade(shades, free, shift.start(), "off", "not on shift");
            free = Math.max(free, shift.end());
        }
        addShade(shades, free, always.end(), "off", "not on shift");
        person.breaks().forEach(one -> addShade(shades, one.start(), one.end(), "break", "break"));
        lanes.add(new Lane("people", person.name(), bars, shades));
    }

    private static void addShade(List<Lane.Shade> shades, int from, int until, String cssClass, String text) {
        if (from < until) {
            shades.add(new Lane.Shade(new Span(from, until), cssClass, text));
        }
    }

    private void cavity(Cavity cavity) {
        List<Lane.Bar> bars = new ArrayList<>();
        view.plan().timetable().ovenRuns().stream().filter(run -> run.cavityId().equals(cavity.id())).forEach(run -> {
            if (run.readyAt() > run.from()) {
                bars.add(new Lane.Bar(new Span(run.from(), run.readyAt()), Lane.Look.HEAT, "heat", "to "
                        + run.temperatureC() + " °C", ""));
            }
            if (run.until() > run.readyAt()) {
                bars.add(new Lane.Bar(new Span(run.readyAt(), run.until()), Lane.Look.HOT, run.temperatureC()
                        + " °C", "", ""));
            }
        });
        view.plan().timetable().steps().stream().filter(step -> step.cavityId().equals(cavity.id()))
                .forEach(step -> bars.add(bar(step.stepId(), step.span(), Lane.Look.STAND)));
        lanes.add(new Lane("ovens", cavity.name(), bars, shades(cavity.away())));
    }

    private void shelf(Store store, Shelf shelf) {
        List<Lane.Bar> bars = new ArrayList<>();
        view.plan().timetable().placements().stream()
                .filter(place -> place.storeId().equals(store.id()) && place.shelfId().equals(shelf.id())
                        && place.piece() == firstPieceHere(place.stepId(), store, shelf))
                .forEach(place -> bars.add(bar(place.stepId(), place.when(), Lane.Look.STAND)));
        if (!bars.isEmpty()) {
            shelf.goods().forEach(goods ->
                    bars.add(new Lane.Bar(goods.when(), Lane.Look.STOCK, goods.name(), "", "")));
            lanes.add(new Lane("stores", store.name() + " " + shelf.name(), bars, shades(store.away())));
        }
    }

    private int firstPieceHere(String stepId, Store store, Shelf shelf) {
        return view.placements(stepId).stream()
                .filter(place -> place.storeId().equals(store.id()) && place.shelfId().equals(shelf.id()))
                .mapToInt(place -> place.piece()).min().orElse(0);
    }

    private void surface(Surface surface) {
        var bars = view.plan().timetable().steps().stream().filter(step -> step.surfaceId().equals(surface.id()))
                .map(step -> bar(step.stepId(), step.span(), Lane.Look.STAND)).toList();
        lanes.add(new Lane("racks and benches", surface.name(), bars, shades(surface.away())));
    }

    private void pool(Pool pool) {
        Map<Integer, List<Lane.Bar>> byUnit = new TreeMap<>();
        view.plan().timetable().steps().forEach(step -> step.units().stream()
                .filter(unit -> unit.poolId().equals(pool.id()) && unit.from() < unit.until())
                .forEach(unit -> byUnit.computeIfAbsent(unit.unit(), key -> new ArrayList<>())
                        .add(bar(step.stepId(), new Span(unit.from(), unit.until()), Lane.Look.STAND))));
        view.plan().timetable().cleanings().stream().filter(one -> one.poolId().equals(pool.id())).forEach(one ->
                byUnit.computeIfAbsent(one.unit(), key -> new ArrayList<>())
                        .add(new Lane.Bar(one.when(), Lane.Look.CLEAN, "clean", "", "")));
        if (byUnit.size() > Lane.MOST_ROWS / 2) {
            lanes.add(new Lane("equipment", pool.name() + " (" + pool.count() + ")",
                    byUnit.values().stream().flatMap(List::stream).toList(), List.of()));
            return;
        }
        byUnit.forEach((unit, bars) -> lanes.add(new Lane("equipment", view.unitName(pool.id(), unit), bars,
                shades(pool.away().stream().filter(away -> away.unit() == unit).map(Pool.PoolAway::when).toList()))));
    }

    private static List<Lane.Shade> shades(List<Span> away) {
        return away.stream().map(span -> new Lane.Shade(span, "off", OUT_OF_USE)).toList();
    }

    private Lane.Bar bar(String stepId, Span when, Lane.Look look) {
        String owner = view.ownerId(stepId);
        return new Lane.Bar(when, look, view.ownerLabel(owner), view.stepName(stepId),
                Patterns.tint(view.orderIndex(owner)));
    }
}
