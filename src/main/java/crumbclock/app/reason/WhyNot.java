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

    /** Placings in all searches together; some seconds of work. */
    private static final long MOST_PLACINGS = 300_000;
    /** One search for hand-overs is small and always worth it. */
    private static final long HAND_OVER_PLACINGS = 50_000;
    private static final int MOST_OTHERS = 6;

    private final Problem problem;
    private final long seed;

    /** @param seed of the small searches; equal problem and seed give equal reasons */
    public WhyNot(Problem problem, long seed) {
        this.problem = problem;
        this.seed = seed;
    }

    /**
     * Reasons for each order that is late or not possible, at least one, by rule. An order on time has none, unless
     * it cannot be handed over beside one that is late or not possible: a cure for the other has to know of it.
     */
    public Map<String, List<Outcome.Reason>> reasons(List<Outcome> outcomes) {
        Map<String, List<Outcome.Reason>> reasons = new LinkedHashMap<>();
        outcomes.forEach(outcome -> reasons.put(outcome.orderId(), List.of()));
        long bad = outcomes.stream().filter(outcome -> !SmallSearch.isOnTime(outcome)).count();
        if (bad == 0) {
            return reasons;
        }
        Map<String, List<Outcome.Reason>> clashes = HandOverClash.reasons(problem, new SmallSearch(seed, HAND_OVER_PLACINGS));
        for (Outcome outcome : outcomes) {
            List<Outcome.Reason> handOver = clashes.getOrDefault(outcome.orderId(), List.of());
            reasons.put(outcome.orderId(), SmallSearch.isOnTime(outcome)
                    ? handOver.stream().map(WhyNot::withAllOnTime).toList()
                    : new OneOrder(order(outcome.orderId()), outcome, handOver, MOST_PLACINGS / bad).reasons());
        }
        return reasons;
    }

    private static Outcome.Reason withAllOnTime(Outcome.Reason clash) {
        return new Outcome.Reason(clash.rule(), "with all orders on time, " + clash.message());
    }

    private Order order(String id) {
        return problem.orders().stream().filter(order -> order.id().equals(id)).findFirst().orElseThrow();
    }

    /** The search for one order's reasons. */
    private final class OneOrder {

        private final Order order;
        private final Outcome outcome;
        private final List<Outcome.Reason> handOver;
        private final SmallSearch search;
        /** Without hand-overs when they clash: that is told already, and what else is in the way must show. */
        private final Problem base;

        OneOrder(Order order, Outcome outcome, List<Outcome.Reason> handOver, long mostPlacings) {
            this.order = order;
            this.outcome = outcome;
            this.handOver = handOver;
            this.search = new SmallSearch(seed, mostPlacings);
            this.base = handOver.isEmpty() ? problem : Relief.withoutHandOvers(problem);
        }

        List<Outcome.Reason> reasons() {
            List<Outcome.Reason> reasons = new ArrayList<>(handOver);
            Problem own = ProblemCut.keeping(base, one -> one == order || one.id().equals(order.id()));
            var tooLong = LongestChain.tooLong(problem, order);
            tooLong.ifPresent(reasons::add);
            if (tooLong.isPresent() || !search.isOnTime(own, order.id())) {
                List<Outcome.Reason> enough = enoughBySelf(own);
                reasons.addAll(enough);
                if (tooLong.isEmpty() && enough.isEmpty()) {
                    reasons.addAll(helped(own, "even alone in the kitchen "));
                }
            } else if (handOver.isEmpty() || !search.isOnTime(base, order.id())) {
                reasons.addAll(takenByOthers());
            }
            if (reasons.isEmpty()) {
                reasons.add(unnamed());
            }
            return reasons.stream().sorted(Comparator.comparing(Outcome.Reason::rule)).toList();
        }

        /** Causes each of which is enough: with everything else granted the order would still not be on time. */
        private List<Outcome.Reason> enoughBySelf(Problem own) {
            List<Outcome.Reason> reasons = new ArrayList<>();
            for (Relief kept : Relief.values()) {
                boolean toldElsewhere = kept == Relief.TIME || kept == Relief.HAND_OVER;
                if (!toldElsewhere && !search.isExhausted() && !search.isOnTime(kept.easeAllOthers(own), order.id())) {
                    reasons.add(new Outcome.Reason(kept.rule(), "even alone in the kitchen " + kept.cause()));
                }
            }
            return reasons;
        }

        /** Causes that work together: dropping one of them helps. */
        private List<Outcome.Reason> helped(Problem hard, String opening) {
            List<Outcome.Reason> reasons = new ArrayList<>();
            for (Relief relief : Relief.values()) {
                // that quicker cakes would help is true of every order and tells nothing
                if (relief != Relief.TIME && search.isOnTime(relief.ease(hard), order.id())) {
                    String cure = relief == Relief.PEOPLE && search.isOnTime(KitchenRelief.hours(hard), order.id())
                            ? "if people were there at all hours" : relief.cure();
                    reasons.add(new Outcome.Reason(relief.rule(), opening + relief.cause() + "; " + cure
                            + " it would be on time"));
                }
            }
            return reasons;
        }

        private List<Outcome.Reason> takenByOthers() {
            List<Outcome.Reason> reasons = new ArrayList<>(helped(base, "beside the other orders "));
            List<String> without = others().stream()
                    .filter(other -> search.isOnTime(ProblemCut.keeping(base, one -> !one.id().equals(other.id())), order.id()))
                    .map(Order::id).toList();
            if (!without.isEmpty()) {
                Rule rule = reasons.isEmpty() ? unnamed().rule() : reasons.get(0).rule();
                reasons.add(new Outcome.Reason(rule, "without " + String.join(", or without ", without)
                        + " it would be on time"));
            }
            return reasons;
        }

        /** Those that are handed over nearest to it: they want the same hours. */
        private List<Order> others() {
            return problem.orders().stream().filter(other -> !other.id().equals(order.id()))
                    .sorted(Comparator.comparingInt(
                            (Order other) -> Math.abs(other.handOver().until() - order.handOver().until())))
                    .limit(MOST_OTHERS).toList();
        }

        /** What is known in any case. */
        private Outcome.Reason unnamed() {
            return outcome.possible()
                    ? new Outcome.Reason(Rule.R16, "beside the other orders the search found no place for it in time")
                    : new Outcome.Reason(Rule.R17,
                            "beside the other orders the search found no place for all of its steps before the problem's end");
        }
    }
}
