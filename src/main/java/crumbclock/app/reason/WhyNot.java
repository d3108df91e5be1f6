package crumbclock.app.reason;

import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The reasons why orders are late or not possible, each independent cause by itself. An order is looked at alone in the
 * kitchen first: what stands in its way then is its own. What does not, the other orders take.
 */
public final class WhyNot {

    private static final long STEPS_ALONE = 20;
    private static final long STEPS_TOGETHER = 20;
    private static final int MOST_OTHERS = 12;

    private final Problem problem;
    private final SmallSearch alone;
    private final SmallSearch together;

    /** @param seed of the small searches; equal problem and seed give equal reasons */
    public WhyNot(Problem problem, long seed) {
        this.problem = problem;
        this.alone = new SmallSearch(seed, STEPS_ALONE);
        this.together = new SmallSearch(seed, STEPS_TOGETHER);
    }

    /**
     * Reasons for each order that is late or not possible, at least one, by rule. An order on time has none, unless
     * it cannot be handed over beside one that is late or not possible: a cure for the other has to know of it.
     */
    public Map<String, List<Outcome.Reason>> reasons(List<Outcome> outcomes) {
        Map<String, List<Outcome.Reason>> reasons = new LinkedHashMap<>();
        outcomes.forEach(outcome -> reasons.put(outcome.orderId(), List.of()));
        if (outcomes.stream().allMatch(SmallSearch::isOnTime)) {
            return reasons;
        }
        Map<String, List<Outcome.Reason>> clashes = HandOverClash.reasons(problem, alone);
        for (Outcome outcome : outcomes) {
            List<Outcome.Reason> handOver = clashes.getOrDefault(outcome.orderId(), List.of());
            reasons.put(outcome.orderId(), SmallSearch.isOnTime(outcome) ? handOver
                    : reasons(order(outcome.orderId()), outcome, handOver));
        }
        return reasons;
    }

    private List<Outcome.Reason> reasons(Order order, Outcome outcome, List<Outcome.Reason> handOver) {
        List<Outcome.Reason> reasons = new ArrayList<>();
        LongestChain.tooLong(problem, order).ifPresent(reasons::add);
        boolean chainTooLong = !reasons.isEmpty();
        reasons.addAll(handOver);
        // a clash at the door is told already; what else is in the way must show without it
        Problem base = handOver.isEmpty() ? problem : Relief.withoutHandOvers(problem);
        Problem own = ProblemCut.keeping(base, one -> one.id().equals(order.id()));
        if (!alone.isOnTime(own, order.id())) {
            reasons.addAll(enoughBySelf(own, order));
            if (reasons.size() == handOver.size() && !chainTooLong) {
                reasons.addAll(helped(own, order, alone, "even alone in the kitchen it cannot be ready in time: "));
            }
        } else if (!together.isOnTime(base, order.id())) {
            reasons.addAll(takenByOthers(base, order));
        }
        if (reasons.isEmpty()) {
            reasons.add(outcome.possible()
                    ? new Outcome.Reason(Rule.R16, "beside the other orders the search found no place for it in time")
                    : new Outcome.Reason(Rule.R17, "the search found no place for all of its steps before the problem's end"));
        }
        return reasons.stream().sorted(Comparator.comparing(Outcome.Reason::rule)).toList();
    }

    /** Causes each of which is enough: with everything else granted the order would still not be on time. */
    private List<Outcome.Reason> enoughBySelf(Problem own, Order order) {
        List<Outcome.Reason> reasons = new ArrayList<>();
        for (Relief kept : Relief.values()) {
            boolean toldElsewhere = kept == Relief.TIME || kept == Relief.HAND_OVER;
            if (!toldElsewhere && !alone.isExhausted() && !alone.isOnTime(kept.easeAllOthers(own), order.id())) {
                reasons.add(new Outcome.Reason(kept.rule(), kept.cause() + ", even alone in the kitchen"));
            }
        }
        return reasons;
    }

    /** Causes that work together: dropping one of them helps. */
    private List<Outcome.Reason> helped(Problem base, Order order, SmallSearch search, String opening) {
        List<Outcome.Reason> reasons = new ArrayList<>();
        for (Relief relief : Relief.values()) {
            if (search.isOnTime(relief.ease(base), order.id())) {
                String cure = relief == Relief.PEOPLE && search.isOnTime(KitchenRelief.hours(base), order.id())
                        ? "if people were there at all hours" : relief.cure();
                reasons.add(new Outcome.Reason(relief.rule(), opening + relief.cause() + "; " + cure
                        + " it would be on time"));
            }
        }
        return reasons;
    }

    private List<Outcome.Reason> takenByOthers(Problem base, Order order) {
        List<String> without = others(order).stream()
                .filter(other -> together.isOnTime(ProblemCut.keeping(base, one -> !one.id().equals(other.id())), order.id()))
                .map(Order::id).toList();
        String others = without.isEmpty() ? "beside the other orders " : "beside " + String.join(" or ", without) + " ";
        List<Outcome.Reason> reasons = helped(base, order, together, others);
        if (reasons.isEmpty() && !without.isEmpty()) {
            reasons = List.of(new Outcome.Reason(Rule.R16, others + "it is not ready in time; without "
                    + (without.size() == 1 ? "that order" : "one of them") + " it would be on time"));
        }
        return reasons;
    }

    /** Those that are handed over nearest to it: they want the same hours. */
    private List<Order> others(Order order) {
        return problem.orders().stream().filter(other -> !other.id().equals(order.id()))
                .sorted(Comparator.comparingInt((Order other) -> Math.abs(other.handOver().until() - order.handOver().until())))
                .limit(MOST_OTHERS).toList();
    }

    private Order order(String id) {
        return problem.orders().stream().filter(order -> order.id().equals(id)).findFirst().orElseThrow();
    }
}
