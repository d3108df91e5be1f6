package crumbclock.formats.order;

import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** An order and one of its cakes as they would be written; what is as it would be by itself is not said. */
record RequestFields(OrderRequest order, CakeRequest cake, ProblemCalendar calendar, Spot spot, IssueLog log) implements Fields {

    @Override
    public String text(Field field) {
        return switch (field) {
            case ORDER -> order.id();
            case ORDER_TITLE -> order.title().equals(order.cakes().get(0).title()) ? "" : order.title();
            case CAKE -> cake.id();
            case TITLE -> cake.title();
            case METHOD -> cake.methodId();
            case SIZE -> cake.tiers().stream().map(TierRequest::size).map(RequestFields::size).collect(Collectors.joining(" + "));
            case LAYERS -> cake.tiers().stream().map(tier -> String.valueOf(tier.layers())).collect(Collectors.joining("+"));
            case PIECES -> String.valueOf(cake.pieces());
            case SERVINGS -> cake.servings() == 0 || cake.pieces() > 1 && cake.servings() == cake.pieces() ? ""
                    : String.valueOf(cake.servings());
            case HAND_OVER -> moment(order.until());
            case HAND_OVER_FROM -> moment(order.from());
            case WAY -> order.way().name().toLowerCase(Locale.ROOT);
            case DOOR_MINUTES -> String.valueOf(order.doorMinutes());
            case LOAD_MINUTES -> String.valueOf(order.loadMinutes());
            case ROAD_MINUTES -> order.way() == HandOverWay.DELIVERY ? String.valueOf(order.roadMinutes()) : "";
            case SET_UP_MINUTES -> String.valueOf(order.setUpMinutes());
            case IMPORTANCE -> String.valueOf(order.importance());
            case EARLIEST -> order.earliest() == 0 ? "" : moment(order.earliest());
            case BUFFER -> String.valueOf(order.bufferWishMinutes());
            case MESSAGE -> cake.message();
            case FREE_FROM, CONTAINS, BATCHES, OPTIONS -> "";
        };
    }

    /** With the offset from UTC, so that the repeated hour of a clock change stays what it is. */
    private String moment(int minute) {
        return calendar.show(minute) + calendar.clock().at(minute).getOffset().getId();
    }

    private static String size(Footprint size) {
        return size.round() ? size.widthMm() + " mm" : size.widthMm() + " x " + size.depthMm() + " mm";
    }

    @Override
    public List<String> list(Field field) {
        return List.copyOf(field == Field.FREE_FROM ? cake.freeFrom() : cake.contains());
    }

    @Override
    public Map<String, String> choices(Field field) {
        return field == Field.OPTIONS ? cake.options() : cake.batches();
    }

    @Override
    public void fault(Field field, String expected, String advice) {
        fault(field, text(field).isEmpty() ? "nothing" : Spot.quote(text(field)), expected, advice);
    }

    @Override
    public void fault(Field field, String read, String expected, String advice) {
        spot.fault(log, field.key() + " " + read, expected, advice);
    }
}
