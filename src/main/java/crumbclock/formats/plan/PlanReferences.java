package crumbclock.formats.plan;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.Spot;
import crumbclock.units.Span;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Checks that a plan file speaks of things that its problem holds, and that its clock times agree with its minutes. */
final class PlanReferences {

    private final ProblemCalendar calendar;
    private final IssueLog log;
    private final Map<String, Step> steps;
    private final Map<String, Person> people;
    private final Map<String, Pool> pools;
    private final Map<String, Cavity> cavities;
    private final Map<String, Store> stores;
    private final Map<String, Surface> surfaces;
    private final Map<String, Order> orders;

    PlanReferences(Problem problem, IssueLog log) {
        this.calendar = new ProblemCalendar(problem.clock(), true);
        this.log = log;
        var kitchen = problem.kitchen();
        this.steps = byId(problem.steps(), Step::id);
        this.people = byId(kitchen.people(), Person::id);
        this.pools = byId(kitchen.pools(), Pool::id);
        this.cavities = byId(kitchen.cavities(), Cavity::id);
        this.stores = byId(kitchen.stores(), Store::id);
        this.surfaces = byId(kitchen.surfaces(), Surface::id);
        this.orders = byId(problem.orders(), Order::id);
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> byId = new TreeMap<>();
        all.forEach(one -> byId.put(id.apply(one), one));
        return byId;
    }

    void step(Spot spot, String id) {
        known(spot.child("step"), id, "a step of the problem", steps);
    }

    void person(Spot spot, String id) {
        known(spot.child("person"), id, "a person of the kitchen", people);
    }

    void order(Spot spot, String id) {
        known(spot.child("order"), id, "an order of the problem", orders);
    }

    void surface(Spot spot, String id) {
        if (!id.isEmpty()) {
            known(spot.child("surface"), id, "a surface of the kitchen", surfaces);
        }
    }

    void cavity(Spot spot, String id) {
        known(spot.child("cavity"), id, "an oven cavity of the kitchen", cavities);
    }

    void unit(Spot spot, String pool, int unit) {
        known(spot.child("pool"), pool, "a pool of the kitchen", pools);
        upTo(spot.child("unit"), unit, pools.containsKey(pool) ? pools.get(pool).count() : unit, "piece of the pool");
    }

    void rack(Spot spot, String cavity, int rack) {
        cavity(spot, cavity);
        upTo(spot.child("rack"), rack, cavities.containsKey(cavity) ? cavities.get(cavity).racks().size() : rack, "rack of the cavity");
    }

    void shelf(Spot spot, String store, String shelf) {
        known(spot.child("store"), store, "a store of the kitchen", stores);
        if (stores.containsKey(store)) {
            known(spot.child("shelf"), shelf, "a shelf of the store", byId(stores.get(store).shelves(), Shelf::id));
        }
    }

    void pan(Spot spot, String step, int pan) {
        int pans = !steps.containsKey(step) ? pan : steps.get(step).oven().map(oven -> oven.pans().size()).orElse(0);
        upTo(spot.child("pan"), pan, pans, "pan of the step");
    }

    void piece(Spot spot, String step, int piece) {
        int pieces = !steps.containsKey(step) ? piece : steps.get(step).place().map(place -> place.form().pieces()).orElse(0);
        upTo(spot.child("piece"), piece, pieces, "piece of the step");
    }

    /** A span under the keys {@code from} and {@code until}; one that ends before it starts is an issue and comes back empty. */
    Span span(Spot spot, int from, int until) {
        return span(spot, "from", from, "until", until);
    }

    Span span(Spot spot, String fromKey, int from, String untilKey, int until) {
        moment(spot, fromKey, from);
        moment(spot, untilKey, until);
        if (until < from) {
            spot.child(untilKey).fault(log, "a minute not before \"" + fromKey + "\", which is " + from, "");
            return new Span(from, from);
        }
        return new Span(from, until);
    }

    /** Compares a minute with the clock time that stands beside it under the same key with "At". */
    void moment(Spot spot, String key, int minute) {
        var at = spot.child(key + "At");
        if (at.node().isMissingNode()) {
            return;
        }
        var moment = ClockText.moment(at.node().asText());
        boolean agrees = moment.flatMap(ClockText.Moment::local).map(calendar.clock().at(minute).toLocalDateTime()::equals).orElse(false);
        if (!agrees) {
            at.fault(log, Spot.quote(calendar.show(minute)) + ", the clock time of \"" + key + "\": " + minute,
                    "Change both, or take the clock time out; the minute is what counts.");
        }
    }

    private void upTo(Spot spot, int number, int most, String what) {
        if (number > most) {
            spot.fault(log, most == 0 ? "nothing, there is no " + what : "a " + what + " from 1 to " + most, "");
        }
    }

    private void known(Spot spot, String id, String expected, Map<String, ?> known) {
        if (!known.containsKey(id)) {
            spot.fault(log, expected, Nearest.advice(id, known.keySet()));
        }
    }
}
