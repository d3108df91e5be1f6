package crumbclock.formats.order;

import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * What an order says, with its cakes, to one request. Faults go to the log.
 *
 * @param bufferMinutes wished buffer of orders that say none
 */
record OrderConverter(ProblemCalendar calendar, CakeConverter cakes, int bufferMinutes) {

    private static final int MOST_MINUTES = 100_000;

    OrderRequest convert(Fields order, List<? extends Fields> cakeFields) {
        String id = order.text(Field.ORDER);
        if (!CakeConverter.isId(id)) {
            order.fault(Field.ORDER, CakeConverter.ID_EXPECTED, "");
        }
        List<CakeRequest> requests = new ArrayList<>();
        for (int i = 0; i < cakeFields.size(); i++) {
            requests.add(cakes.convert(cakeFields.get(i), id, i + 1, cakeFields.size()));
        }
        var way = way(order);
        if (way == HandOverWay.DELIVERY && order.text(Field.ROAD_MINUTES).isEmpty()) {
            order.fault(Field.ROAD_MINUTES, "the minutes on the road, one way, for a delivery", "");
        }
        int until = handOver(order);
        String title = order.text(Field.ORDER_TITLE).isEmpty() ? requests.get(0).title() : order.text(Field.ORDER_TITLE);
        return new OrderRequest(id, title, requests, way, from(order, until), until,
                minutes(order, Field.DOOR_MINUTES, 5), minutes(order, Field.LOAD_MINUTES, 10),
                minutes(order, Field.ROAD_MINUTES, 0), minutes(order, Field.SET_UP_MINUTES, 0),
                CakeConverter.whole(order, Field.IMPORTANCE, 1, 1_000, 1), earliest(order, until),
                minutes(order, Field.BUFFER, bufferMinutes));
    }

    private static HandOverWay way(Fields order) {
        return switch (order.text(Field.WAY).toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "")) {
            case "", "pickup" -> HandOverWay.PICK_UP;
            case "delivery" -> HandOverWay.DELIVERY;
            case "setaside" -> HandOverWay.SET_ASIDE;
            default -> {
                order.fault(Field.WAY, "one of pick-up, delivery, set aside", "");
                yield HandOverWay.PICK_UP;
            }
        };
    }

    private int handOver(Fields order) {
        var minute = moment(order, Field.HAND_OVER);
        if (minute.isPresent() && !calendar.holds(minute.getAsInt())) {
            order.fault(Field.HAND_OVER, "a time inside the problem, " + calendar.showWhole(), "");
        }
        return minute.orElse(calendar.clock().horizonMinutes());
    }

    private int from(Fields order, int until) {
        if (order.text(Field.HAND_OVER_FROM).isEmpty()) {
            return until;
        }
        int from = moment(order, Field.HAND_OVER_FROM).orElse(until);
        if (calendar.trusted() && from > until && !order.text(Field.HAND_OVER).isEmpty()) {
            order.fault(Field.HAND_OVER_FROM, "a time not after " + Field.HAND_OVER.column() + ", " + calendar.show(until), "");
            return until;
        }
        return from;
    }

    private int earliest(Fields order, int until) {
        if (order.text(Field.EARLIEST).isEmpty()) {
            return 0;
        }
        int earliest = moment(order, Field.EARLIEST).orElse(0);
        if (calendar.trusted() && earliest >= until) {
            order.fault(Field.EARLIEST, "a time before the hand-over, " + calendar.show(until), "");
        }
        return Math.max(0, earliest);
    }

    private OptionalInt moment(Fields order, Field field) {
        var minute = calendar.minute(order.text(field));
        if (minute.isEmpty()) {
            order.fault(field, ClockText.MOMENT_EXPECTED, "");
        }
        return minute;
    }

    private static int minutes(Fields order, Field field, int fallback) {
        return CakeConverter.whole(order, field, 0, MOST_MINUTES, fallback);
    }
}
