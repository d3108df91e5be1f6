package crumbclock.methods;

import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Wait;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The last step of an order: at the door, or out on the road and back. Anyone may do it. */
final class HandOverMaker {

    private static final String CAR = "car";
    private static final int SHORT_WHILE = 10;

    private HandOverMaker() {
    }

    /** Id of the hand-over step; empty for an order that is set aside. */
    static String id(OrderRequest order) {
        return order.way() == HandOverWay.SET_ASIDE ? "" : order.id() + "/hand-over";
    }

    /** As options say it: {@code pick-up}, {@code delivery}, {@code set-aside}. */
    static String option(HandOverWay way) {
        return way.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static HandOver handOver(OrderRequest order) {
        int offset = order.way() == HandOverWay.DELIVERY
                ? order.loadMinutes() + order.roadMinutes() + order.setUpMinutes() : 0;
        return new HandOver(order.way(), id(order), offset, order.from(), order.until());
    }

    /** @param poolIds the car is taken where the kitchen counts one */
    static Optional<Step> step(OrderRequest order, Set<String> poolIds) {
        return switch (order.way()) {
            case SET_ASIDE -> Optional.empty();
            case PICK_UP -> Optional.of(step(order, "hand over at the door", List.of(),
                    new HandsOn(order.doorMinutes(), 1, "", "hand-over", false, false, false)));
            case DELIVERY -> {
                int minutes = order.loadMinutes() + 2 * order.roadMinutes() + order.setUpMinutes();
                var car = poolIds.contains(CAR) ? List.of(new EquipmentNeed(CAR, 1, 0, id(order)))
                        : List.<EquipmentNeed>of();
                yield Optional.of(step(order, "deliver and come back", car,
                        new HandsOn(minutes, 1, "", "hand-over", false, true, false)));
            }
        };
    }

    private static Step step(OrderRequest order, String name, List<EquipmentNeed> equipment, HandsOn work) {
        return new Step(id(order), name, order.id(), "", StepKind.HANDS_ON, Optional.of(work), 0, 0, Optional.empty(),
                Optional.empty(), false, equipment, Optional.empty(), Optional.empty(), Set.of(), Set.of(),
                order.earliest());
    }

    /** From a cake's last step; several cakes are fetched one after the other, so the while grows with them. */
    static Wait wait(OrderRequest order, String lastStepId) {
        return new Wait(lastStepId, id(order), 0, Math.max(SHORT_WHILE, 2 * order.cakes().size()));
    }
}
