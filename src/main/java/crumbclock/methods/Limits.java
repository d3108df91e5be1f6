package crumbclock.methods;

import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.LifeLimit;
import crumbclock.methods.Expansion.Made;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Lives, cold limits and freshness wishes of one expansion. */
final class Limits {

    private static final String HAND_OVER = "hand-over";

    private final WorkOrder order;
    private final Expansion expansion;

    Limits(WorkOrder order, Expansion expansion) {
        this.order = order;
        this.expansion = expansion;
    }

    /** From one step to another, with the steps in between that hold the thing. */
    private record Stretch(String id, String fromId, String toId, List<String> heldIds) {
    }

    List<LifeLimit> lives() {
        var lives = new ArrayList<LifeLimit>();
        for (LifeTemplate life : order.method().lives()) {
            for (Stretch stretch : stretches(life.id(), life.from(), life.to(), life.held())) {
                lives.add(new LifeLimit(stretch.id(), life.name(), order.ownerId(), stretch.fromId(), stretch.toId(),
                        stretch.heldIds(), life.lifeMinutes()));
            }
        }
        return lives;
    }

    List<ColdLimit> coldLimits() {
        var limits = new ArrayList<ColdLimit>();
        for (ColdTemplate cold : order.method().coldLimits()) {
            for (Stretch stretch : stretches(cold.id(), cold.from(), cold.to(), cold.held())) {
                limits.add(new ColdLimit(stretch.id(), cold.name(), order.ownerId(), stretch.fromId(), stretch.toId(),
                        stretch.heldIds(), cold.mostMinutesOut()));
            }
        }
        return limits;
    }

    List<FreshnessWish> wishes(String orderId) {
        var wishes = new ArrayList<FreshnessWish>();
        for (WishTemplate wish : order.method().wishes()) {
            for (Made from : expansion.find(wish.from(), Made.ALL_TIERS)) {
                wishes.add(new FreshnessWish(from.id(), orderId, wish.minutes()));
            }
        }
        return wishes;
    }

    /** One stretch for each pair of steps; none when the options leave out its beginning or its end. */
    private List<Stretch> stretches(String id, String from, String to, List<String> held) {
        var stretches = new ArrayList<Stretch>();
        for (Made start : expansion.find(from, Made.ALL_TIERS)) {
            for (String end : ends(to, start)) {
                var heldIds = new LinkedHashSet<String>();
                held.forEach(name -> expansion.find(name, start.tier()).forEach(made -> heldIds.add(made.id())));
                heldIds.remove(end);
                String suffix = start.tier() == Made.ALL_TIERS || order.scope().tiers().size() == 1 ? ""
                        : "-tier-" + (start.tier() + 1);
                stretches.add(new Stretch(order.ownerId() + "/" + id + suffix, start.id(), end, List.copyOf(heldIds)));
            }
        }
        return stretches;
    }

    /** Where an order is set aside nobody hands over: what keeps until then must keep until the cake's last step. */
    private Set<String> ends(String to, Made start) {
        var ends = new LinkedHashSet<String>();
        if (!HAND_OVER.equals(to)) {
            expansion.find(to, start.tier()).forEach(made -> ends.add(made.id()));
        } else if (!order.handOverId().isEmpty()) {
            ends.add(order.handOverId());
        } else if (!expansion.lastStepId().equals(start.id())) {
            ends.add(expansion.lastStepId());
        }
        return ends;
    }
}
