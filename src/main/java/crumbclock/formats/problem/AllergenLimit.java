package crumbclock.formats.problem;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.order.Cake;
import crumbclock.domain.work.Step;
import crumbclock.methods.ExpansionFault;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How many allergens one problem may name: as many as the planner can tell apart. */
final class AllergenLimit {

    private static final int MOST = 64;

    private final Set<String> named = new LinkedHashSet<>();

    private AllergenLimit() {
    }

    /** The first thing that names one too many, if any. */
    static Optional<ExpansionFault> fault(Kitchen kitchen, List<Cake> cakes, List<Step> steps) {
        var limit = new AllergenLimit();
        kitchen.stores().forEach(store -> store.shelves().forEach(shelf -> limit.add(shelf.freeFrom())));
        if (limit.isOver()) {
            return Optional.of(limit.fault("", ""));
        }
        for (Step step : steps) {
            limit.add(step.contains());
            limit.add(step.freeFrom());
            if (limit.isOver()) {
                String order = cakes.stream().filter(cake -> cake.id().equals(step.ownerId())).map(Cake::orderId).findFirst().orElse("");
                return Optional.of(limit.fault(order, step.ownerId()));
            }
        }
        return Optional.empty();
    }

    private void add(Collection<String> allergens) {
        named.addAll(allergens);
    }

    private boolean isOver() {
        return named.size() > MOST;
    }

    private ExpansionFault fault(String orderId, String itemId) {
        return new ExpansionFault(orderId, itemId, "read " + named.size() + " different allergens so far, \"" + List.copyOf(named).get(MOST)
                + "\" among them; expected at most " + MOST + " in one problem, shelves counted. Call several that belong together by one name");
    }
}
