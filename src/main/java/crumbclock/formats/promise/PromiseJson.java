package crumbclock.formats.promise;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.formats.json.JsonText;

/** The answers as JSON: times as minutes from the problem's start and as clock times, plans by the names of their folders. */
public final class PromiseJson {

    private final PromiseAnswer answer;

    private PromiseJson(PromiseAnswer answer) {
        this.answer = answer;
    }

    /** Equal answers give equal text. */
    public static String write(PromiseAnswer answer) {
        return JsonText.write(new PromiseJson(answer).root());
    }

    private ObjectNode root() {
        var root = JsonNodeFactory.instance.objectNode();
        root.put("problem", answer.base().title()).put("order", answer.orderId()).put("title", answer.order().title());
        minute(root, "now", answer.now());
        minute(root, "wished", answer.wishedMinute());
        root.put("seed", answer.seed()).put("complete", answer.complete());
        answer.wished().ifPresent(plan -> {
            var node = root.putObject("asWished");
            plan(node, plan);
            node.put("price", plan.toll().price().id());
        });
        var offers = root.putArray("offers");
        answer.offers().forEach(offer -> offer(offers.addObject(), offer));
        root.put("tried", answer.tried());
        var helps = root.putArray("helps");
        answer.helps().forEach(help -> help(helps.addObject(), help));
        return root;
    }

    private void minute(ObjectNode node, String name, int minute) {
        node.put(name, minute).put(name + "At", answer.asked().clock().at(minute).toOffsetDateTime().toString());
    }

    private void offer(ObjectNode node, Offer offer) {
        node.put("price", offer.price().id());
        if (offer.notBefore() >= 0) {
            minute(node, "notBefore", offer.notBefore());
        }
        node.put("proven", offer.isProven());
        offer.earliest().ifPresent(plan -> plan(node.putObject("earliest"), plan));
        offer.lastYes().ifPresent(plan -> {
            var last = node.putObject("lastYes");
            minute(last, "kept", offer.kept());
            last.put("plan", answer.nameOf(plan));
            minute(last, "yesBy", plan.sayYesBy());
        });
    }

    private void help(ObjectNode node, Help help) {
        node.put("help", help.words()).put("price", help.price().id());
        help.before().ifPresent(before -> minute(node, "without", before));
        plan(node.putObject("with"), help.plan());
    }

    private void plan(ObjectNode node, PromisedPlan plan) {
        node.put("plan", answer.nameOf(plan));
        minute(node, "ready", plan.own().readyMinute());
        minute(node, "handOver", plan.own().handMinute());
        HandOver window = plan.problem().orders().stream().filter(order -> order.id().equals(answer.orderId())).findFirst().orElseThrow().handOver();
        minute(node, "windowFrom", window.from());
        minute(node, "windowUntil", window.until());
        minute(node, "yesBy", plan.sayYesBy());
        var others = node.putArray("others");
        for (OrderEffect one : plan.toll().orders()) {
            others.addObject().put("order", one.orderId()).put("bufferBefore", one.before().bufferMinutes())
                    .put("buffer", one.after().bufferMinutes()).put("lateBefore", one.before().lateMinutes())
                    .put("late", one.after().lateMinutes()).put("moved", one.moved()).put("mostMoved", one.mostMoved());
        }
    }
}
