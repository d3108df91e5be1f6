package crumbclock.domain.promise;

import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All answers about one more order.
 *
 * @param base      the problem without it
 * @param have      the plan that people have
 * @param asked     the problem with it, as it is wished
 * @param orderId   the new order
 * @param now       minute at which it is asked for; what begins before that stays as it is
 * @param wished    the plan that hands it over as wished, at the least price that was found; empty when none was found
 * @param offers    one for each price, in their order; fewer when ended early
 * @param helps     what helps, the most first
 * @param tried     how many things were tried that might help
 * @param seed      of all searches
 * @param complete  false: ended early, and what is missing was not looked for
 */
public record PromiseAnswer(Problem base, Plan have, Problem asked, String orderId, int now, Optional<PromisedPlan> wished,
        List<Offer> offers, List<Help> helps, int tried, long seed, boolean complete) {

    public PromiseAnswer {
        offers = List.copyOf(offers);
        helps = List.copyOf(helps);
    }

    /** Latest minute of hand-over that was wished. */
    public int wishedMinute() {
        return order().handOver().until();
    }

    /** The new order, as it is wished. */
    public Order order() {
        return asked.orders().stream().filter(one -> one.id().equals(orderId)).findFirst().orElseThrow();
    }

    /** All plans, each once, by a name that is fit for a folder. */
    public Map<String, PromisedPlan> plans() {
        Map<String, PromisedPlan> plans = new LinkedHashMap<>();
        wished.ifPresent(plan -> add(plans, "as-wished", plan));
        for (Offer offer : offers) {
            offer.earliest().ifPresent(plan -> add(plans, offer.price().id(), plan));
        }
        for (Offer offer : offers) {
            offer.lastYes().ifPresent(plan -> add(plans, offer.price().id() + "-last-yes", plan));
        }
        helps.forEach(help -> add(plans, "help-" + help.name(), help.plan()));
        return plans;
    }

    private static void add(Map<String, PromisedPlan> plans, String name, PromisedPlan plan) {
        if (plans.values().stream().noneMatch(other -> other == plan)) {
            plans.put(name, plan);
        }
    }

    /** Under which name a plan stands among {@link #plans}. */
    public String nameOf(PromisedPlan plan) {
        return plans().entrySet().stream().filter(entry -> entry.getValue() == plan).map(Map.Entry::getKey).findFirst().orElseThrow();
    }
}
