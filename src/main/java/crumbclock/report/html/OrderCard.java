package crumbclock.report.html;

import crumbclock.domain.order.Cake;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.report.view.BoundWords;
import crumbclock.report.view.ClockText;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One order as the page shows it.
 *
 * @param state    "on time", "late by …" or "not possible"
 * @param stateCss class that goes with it
 * @param tint     position of the order, for its colour
 * @param bound    what holds for a late order whatever the others do; empty for none
 * @param waitsFor steps without slack, in words, from first to last
 */
public record OrderCard(String id, String title, String state, String stateCss, int tint, String handOver,
        List<Fact> facts, List<CakeLine> cakes, List<String> waitsFor, List<String> reasons, String bound) {

    /** A name and what belongs to it. */
    public record Fact(String name, String value) {
    }

    /** One cake of the order. */
    public record CakeLine(String title, int servings, String message, String contains, String freeFrom) {
    }

    static List<OrderCard> of(PlanView view) {
        return view.problem().orders().stream().map(order -> card(view, order, view.plan().timetable().outcomes()
                .stream().filter(one -> one.orderId().equals(order.id())).findFirst())).toList();
    }

    private static OrderCard card(PlanView view, Order order, Optional<Outcome> outcome) {
        boolean possible = outcome.map(Outcome::possible).orElse(false);
        int late = outcome.map(Outcome::lateMinutes).orElse(0);
        String state = !possible ? "not possible" : late > 0 ? "late by " + ClockText.duration(late) : "on time";
        String css = !possible ? "impossible" : late > 0 ? "late" : "on-time";
        List<Fact> facts = new ArrayList<>();
        if (possible) {
            facts.addAll(facts(view, order, outcome.get()));
        }
        return new OrderCard(order.id(), order.title(), state, css, view.orderIndex(order.id()),
                handOver(view, order.handOver()), facts, order.cakes().stream().map(OrderCard::cake).toList(),
                outcome.map(Outcome::waitsFor).orElse(List.of()).stream()
                        .map(id -> waitsFor(view, order, id)).toList(),
                outcome.map(Outcome::reasons).orElse(List.of()).stream()
                        .map(one -> one.rule() + " " + one.rule().title() + ": " + one.message()).toList(),
                outcome.flatMap(new BoundWords(view)::sentence).orElse(""));
    }

    private static List<Fact> facts(PlanView view, Order order, Outcome outcome) {
        var clock = view.clock();
        String buffer = ClockText.duration(outcome.bufferMinutes());
        if (order.bufferWishMinutes() > 0) {
            buffer += outcome.bufferMinutes() < order.bufferWishMinutes()
                    ? ", " + ClockText.duration(order.bufferWishMinutes()) + " wished"
                    : ", as wished";
        }
        return List.of(new Fact("ready", clock.dayTime(outcome.readyMinute())),
                new Fact("hand-over planned", clock.dayTime(outcome.handMinute())), new Fact("buffer", buffer),
                new Fact("late", outcome.lateMinutes() == 0 ? "no" : ClockText.duration(outcome.lateMinutes())));
    }

    private static String handOver(PlanView view, HandOver handOver) {
        String when = handOver.from() >= handOver.until() ? view.clock().dateTime(handOver.until())
                : view.clock().day(handOver.from()) + ", " + view.clock().span(new Span(handOver.from(),
                        handOver.until()));
        return switch (handOver.way()) {
            case PICK_UP -> "fetched at the door " + when;
            case DELIVERY -> "delivered " + when + (handOver.offsetMinutes() > 0
                    ? ", " + ClockText.duration(handOver.offsetMinutes()) + " with loading and road" : "");
            case SET_ASIDE -> "set aside by " + view.clock().dateTime(handOver.until());
        };
    }

    private static String waitsFor(PlanView view, Order order, String stepId) {
        String owner = view.ownerId(stepId);
        boolean own = owner.equals(order.id()) || order.cakes().stream().anyMatch(cake -> cake.id().equals(owner));
        return own && order.cakes().size() == 1 || owner.isEmpty() ? view.stepName(stepId)
                : view.ownerLabel(owner) + " " + view.stepName(stepId);
    }

    private static CakeLine cake(Cake cake) {
        return new CakeLine(cake.title(), cake.servings(), cake.message(), String.join(", ", cake.contains()),
                String.join(", ", cake.freeFrom()));
    }
}
