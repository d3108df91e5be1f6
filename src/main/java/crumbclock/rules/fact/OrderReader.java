package crumbclock.rules.fact;

import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeSet;

/** Lays out what becomes of each order and which steps it needs. */
final class OrderReader {

    private final Map<String, TimedStep> timedById;
    private final List<Object> facts = new ArrayList<>();

    OrderReader(Problem problem, Timetable timetable, Map<String, TimedStep> timedById) {
        this.timedById = timedById;
        Map<String, Outcome> outcomeById = new HashMap<>();
        timetable.outcomes().forEach(outcome -> outcomeById.putIfAbsent(outcome.orderId(), outcome));
        for (Order order : problem.orders()) {
            Outcome outcome = outcomeById.get(order.id());
            readClaims(order, fateOf(outcome));
            if (outcome != null) {
                facts.add(new OrderTimes(order, outcome, ready(order), handStart(order)));
            }
        }
    }

    List<Object> facts() {
        return facts;
    }

    private static Claim.Fate fateOf(Outcome outcome) {
        if (outcome == null) {
            return Claim.Fate.UNTOLD;
        }
        return outcome.possible() ? Claim.Fate.MADE : Claim.Fate.NOT_MADE;
    }

    private void readClaims(Order order, Claim.Fate fate) {
        var owners = new TreeSet<String>();
        owners.add(order.id());
        for (Cake cake : order.cakes()) {
            owners.add(cake.id());
            owners.addAll(cake.batchIds());
        }
        owners.forEach(owner -> facts.add(new Claim(owner, order.id(), fate)));
    }

    private OptionalLong ready(Order order) {
        long ready = Long.MIN_VALUE;
        for (Cake cake : order.cakes()) {
            TimedStep finish = timedById.get(cake.finishStepId());
            if (finish == null) {
                return OptionalLong.empty();
            }
            ready = Math.max(ready, finish.end());
        }
        return order.cakes().isEmpty() ? OptionalLong.empty() : OptionalLong.of(ready);
    }

    private OptionalLong handStart(Order order) {
        TimedStep step = timedById.get(order.handOver().stepId());
        return step == null ? OptionalLong.empty() : OptionalLong.of(step.start());
    }
}
