package crumbclock.formats.order;

import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Orders once more, with some of what they say said differently. Faults go to the log, at the place of the edit. */
public final class OrderEdits {

    private final ProblemCalendar calendar;
    private final OrderConverter converter;
    private final IssueLog log;

    /** @param bufferMinutes wished buffer of orders that say none */
    public OrderEdits(ProblemCalendar calendar, Names names, int bufferMinutes, IssueLog log) {
        this.calendar = calendar;
        this.converter = new OrderConverter(calendar, new CakeConverter(names), bufferMinutes);
        this.log = log;
    }

    /** Keys of an edit that are about a cake, and not about its whole order. */
    public static Set<String> keysOfCakes() {
        Set<String> keys = new TreeSet<>();
        Arrays.stream(Field.values()).filter(field -> !field.ofOrder() && field != Field.CAKE).forEach(field -> keys.add(field.key()));
        return keys;
    }

    /** All keys that an edit may have. */
    public static Set<String> keys() {
        Set<String> keys = keysOfCakes();
        Arrays.stream(Field.values()).filter(field -> field.ofOrder() && field != Field.ORDER && field != Field.ORDER_TITLE)
                .forEach(field -> keys.add(field.key()));
        return keys;
    }

    /**
     * The order with what an edit says. A hand-over that moves takes the start of its window along.
     *
     * @param edit   an object with keys of an order and of a cake
     * @param cakeId the cake that is meant; keys of cakes change no other
     */
    public OrderRequest edited(OrderRequest order, Spot edit, String cakeId) {
        var said = new JsonFields(edit, log);
        List<Fields> cakes = new ArrayList<>();
        for (CakeRequest cake : order.cakes()) {
            var before = new RequestFields(order, cake, calendar, edit, log);
            cakes.add(cake.id().equals(cakeId) ? new EditedFields(said, before) : before);
        }
        var fields = new EditedFields(said, new RequestFields(order, order.cakes().get(0), calendar, edit, log));
        var edited = converter.convert(fields, cakes);
        boolean windowMoves = fields.says(Field.HAND_OVER) && !fields.says(Field.HAND_OVER_FROM);
        return windowMoves ? from(edited, Math.max(0, edited.until() - (order.until() - order.from()))) : edited;
    }

    private static OrderRequest from(OrderRequest order, int from) {
        return new OrderRequest(order.id(), order.title(), order.cakes(), order.way(), from, order.until(), order.doorMinutes(),
                order.loadMinutes(), order.roadMinutes(), order.setUpMinutes(), order.importance(), order.earliest(),
                order.bufferWishMinutes());
    }

    /** The same under another id, its cakes too. */
    public static OrderRequest copied(OrderRequest order, String id) {
        var cakes = order.cakes().stream().map(cake -> new CakeRequest(id + cake.id().substring(order.id().length()), cake.title(),
                cake.methodId(), cake.tiers(), cake.pieces(), cake.servings(), cake.message(), cake.contains(), cake.freeFrom(),
                cake.batches(), cake.options())).toList();
        return new OrderRequest(id, order.title(), cakes, order.way(), order.from(), order.until(), order.doorMinutes(),
                order.loadMinutes(), order.roadMinutes(), order.setUpMinutes(), order.importance(), order.earliest(),
                order.bufferWishMinutes());
    }
}
