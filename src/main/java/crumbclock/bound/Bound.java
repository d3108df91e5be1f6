package crumbclock.bound;

import crumbclock.domain.order.Order;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.Weights;
import crumbclock.engine.model.CompiledProblem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Reckons what no sound plan of a problem can be better than, without making a plan. Equal problems give equal bounds.
 */
public final class Bound {

    /** Orders times steps, beyond which single orders are looked at by waits and calendars alone. */
    private static final long MOST_LOOKS = 200_000;

    private final Problem problem;
    private final CompiledProblem compiled;
    private final Scope scope;
    private final Proof proof;
    private final List<OrderBound> orders = new ArrayList<>();

    private Bound(Problem problem) {
        this.problem = problem;
        compiled = CompiledProblem.of(problem, false);
        scope = new Scope(compiled);
        proof = Proof.of(compiled, scope.nobody());
        for (int order = 0; order < compiled.orders.length; order++) {
            orders.add(alone(order));
        }
    }

    /** The bound for plans that make every order, as far as it can be made. */
    public static LowerBound of(Problem problem) {
        return of(problem, everyOrder(problem));
    }

    /**
     * The bound for plans that make these orders and no others; its {@code medium} and what it says of single orders hold
     * for every sound plan all the same.
     *
     * @param orderIds orders that are made; ids that the problem does not know count for nothing
     */
    public static LowerBound of(Problem problem, Set<String> orderIds) {
        return new Bound(problem).with(orderIds);
    }

    private static Set<String> everyOrder(Problem problem) {
        Set<String> ids = new LinkedHashSet<>();
        problem.orders().forEach(order -> ids.add(order.id()));
        return ids;
    }

    private OrderBound alone(int order) {
        boolean[] in = scope.of(List.of(order));
        boolean many = (long) compiled.orders.length * compiled.tasks.length > MOST_LOOKS;
        Proof own = many ? proof.withoutResources(in) : proof.with(in);
        String id = problem.orders().get(order).id();
        if (own.isContradicted(new Lateness.HandOvers(compiled, proof.net.horizon))) {
            return new OrderBound(id, false, -1, -1, 0);
        }
        var times = compiled.orders[order];
        int ready = 0;
        for (var finish : times.finishes()) {
            ready = Math.max(ready, own.earliestEnd(finish.index));
        }
        int moment = times.handOver() == null ? ready : own.earliestStart(times.handOver().index) + times.offset();
        return new OrderBound(id, true, ready, moment, Math.max(0, moment - times.until()));
    }

    private LowerBound with(Set<String> orderIds) {
        List<Integer> can = new ArrayList<>();
        List<Integer> made = new ArrayList<>();
        for (int order = 0; order < orders.size(); order++) {
            if (orders.get(order).possible()) {
                can.add(order);
                if (orderIds.contains(orders.get(order).orderId())) {
                    made.add(order);
                }
            }
        }
        Proof all = proof.with(scope.of(can));
        Lateness points = Lateness.points(compiled, orders, can, all);
        Proof some = made.equals(can) ? all : proof.with(scope.of(made));
        Lateness minutes = Lateness.minutes(compiled, orders, made, some);
        boolean together = points.areTogetherPossible();
        return new LowerBound(medium(can, points), Math.toIntExact(minutes.least()), new LastEnd(some).least(),
                together && can.size() == orders.size(), orders);
    }

    /** Either all that can be made is made, or at least one more order is left out, which costs its points. */
    private long medium(List<Integer> can, Lateness points) {
        Weights weights = problem.weights();
        long outside = 0;
        for (int order = 0; order < orders.size(); order++) {
            outside += can.contains(order) ? 0 : notMade(order, weights);
        }
        long leftOut = Long.MAX_VALUE;
        long apart = 0;
        for (int order : can) {
            long base = Math.min(points.alone(order), notMade(order, weights));
            apart += base;
            leftOut = Math.min(leftOut, notMade(order, weights) - base);
        }
        if (can.isEmpty()) {
            return outside;
        }
        long oneLess = apart + leftOut;
        return outside + (points.areTogetherPossible() ? Math.min(points.least(), oneLess) : oneLess);
    }

    private long notMade(int order, Weights weights) {
        Order one = problem.orders().get(order);
        return (long) weights.notPossible() * one.importance();
    }
}
