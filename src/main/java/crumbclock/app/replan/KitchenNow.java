package crumbclock.app.replan;

import crumbclock.domain.change.KitchenChange;
import crumbclock.domain.change.KitchenChange.Away;
import crumbclock.domain.change.KitchenChanges;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.problem.Problem;
import java.util.List;
import java.util.stream.Stream;

/** The kitchen as it is left by what happened to it. */
final class KitchenNow {

    private final List<KitchenEvent> events;

    KitchenNow(List<KitchenEvent> events) {
        this.events = events;
    }

    Problem in(Problem problem) {
        Kitchen left = problem.kitchen();
        for (KitchenEvent event : events) {
            for (Away away : gone(event, problem.kitchen()).toList()) {
                left = KitchenChanges.changed(left, away);
            }
        }
        return problem.withKitchen(left);
    }

    private static Stream<Away> gone(KitchenEvent event, Kitchen kitchen) {
        return switch (event.kind()) {
            case PERSON_AWAY -> Stream.of(away(event, KitchenChange.Kind.PERSON, event.id()));
            case OVEN_DEAD -> Stream.of(away(event, KitchenChange.Kind.OVEN, event.id()));
            case STORE_WARM -> Stream.of(away(event, KitchenChange.Kind.STORE, event.id()));
            case POWER_CUT -> kitchen.cavities().stream().map(Cavity::id).map(id -> away(event, KitchenChange.Kind.OVEN, id));
        };
    }

    private static Away away(KitchenEvent event, KitchenChange.Kind kind, String id) {
        return new Away(kind, id, 0, event.when());
    }
}
