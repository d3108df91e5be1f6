package crumbclock.app.replan;

import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.problem.Problem;
import crumbclock.units.Span;
import crumbclock.units.Spans;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The kitchen as it is left by what happened to it. */
final class KitchenNow {

    private final List<KitchenEvent> events;

    KitchenNow(List<KitchenEvent> events) {
        this.events = events;
    }

    Problem in(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        var left = new Kitchen(kitchen.name(), kitchen.people().stream().map(this::person).toList(),
                kitchen.cavities().stream().map(this::oven).toList(), kitchen.stores().stream().map(this::store).toList(),
                kitchen.surfaces(), kitchen.pools(), kitchen.opening());
        return problem.withKitchen(left);
    }

    private List<Span> spans(KitchenEvent.Kind kind, String id) {
        return events.stream().filter(event -> event.kind() == kind && event.id().equals(id)).map(KitchenEvent::when).toList();
    }

    private Person person(Person person) {
        List<Span> away = spans(KitchenEvent.Kind.PERSON_AWAY, person.id());
        return away.isEmpty() ? person : new Person(person.id(), person.name(), minus(person.shifts(), away), person.breaks(),
                person.skills(), person.paceByWork(), person.mostMinutesADay());
    }

    private Cavity oven(Cavity oven) {
        List<Span> off = new ArrayList<>(spans(KitchenEvent.Kind.OVEN_DEAD, oven.id()));
        off.addAll(spans(KitchenEvent.Kind.POWER_CUT, ""));
        return off.isEmpty() ? oven : new Cavity(oven.id(), oven.name(), oven.racks(), oven.leastC(), oven.mostC(),
                oven.preheatMinutes(), oven.upPerTenC(), oven.downPerTenC(), oven.keepHotMinutes(), oven.wallGapMm(),
                oven.panGapMm(), plus(oven.away(), off));
    }

    private Store store(Store store) {
        List<Span> warm = spans(KitchenEvent.Kind.STORE_WARM, store.id());
        return warm.isEmpty() ? store : new Store(store.id(), store.name(), store.kind(), store.gapMm(), store.wallGapMm(),
                store.warmestInC(), store.humid(), store.shelves(), plus(store.away(), warm));
    }

    private static List<Span> plus(List<Span> spans, List<Span> more) {
        return Spans.joined(Stream.concat(spans.stream(), more.stream()).toList());
    }

    private static List<Span> minus(List<Span> spans, List<Span> gone) {
        List<Span> left = spans;
        for (Span hole : gone) {
            left = Spans.minus(left, hole);
        }
        return left;
    }
}
