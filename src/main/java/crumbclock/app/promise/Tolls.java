package crumbclock.app.promise;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PersonEffect;
import crumbclock.domain.promise.Toll;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Sets a plan with the new order beside the one that people have. */
final class Tolls {

    private final Problem problem;
    private final Map<String, PlacedStep> before = new LinkedHashMap<>();
    private final Timetable have;
    private final Timetable found;

    private Tolls(Problem problem, Timetable have, Timetable found) {
        this.problem = problem;
        this.have = have;
        this.found = found;
        have.steps().forEach(step -> before.put(step.stepId(), step));
    }

    /** @param problem with the new order */
    static Toll of(Problem problem, Timetable have, Timetable found) {
        return new Tolls(problem, have, found).toll();
    }

    private Toll toll() {
        List<OrderEffect> orders = new ArrayList<>();
        for (Order order : problem.orders()) {
            var was = outcome(have, order.id());
            var is = outcome(found, order.id());
            if (was != null && is != null) {
                List<Integer> moves = moves(order);
                orders.add(new OrderEffect(order.id(), was, is, order.bufferWishMinutes(), moves.size(),
                        moves.stream().mapToInt(Integer::intValue).max().orElse(0)));
            }
        }
        return new Toll(orders, problem.kitchen().people().stream().map(this::effect).toList());
    }

    private static Outcome outcome(Timetable timetable, String orderId) {
        return timetable.outcomes().stream().filter(one -> one.orderId().equals(orderId)).findFirst().orElse(null);
    }

    /** Minutes by which each step moves that begins at another time; batches count for each order that uses them. */
    private List<Integer> moves(Order order) {
        Set<String> owners = new TreeSet<>(List.of(order.id()));
        order.cakes().forEach(cake -> {
            owners.add(cake.id());
            owners.addAll(cake.batchIds());
        });
        Set<String> own = new TreeSet<>();
        problem.steps().stream().filter(step -> owners.contains(step.ownerId())).map(Step::id).forEach(own::add);
        return found.steps().stream().filter(step -> own.contains(step.stepId()) && before.containsKey(step.stepId()))
                .map(step -> Math.abs(step.start() - before.get(step.stepId()).start())).filter(minutes -> minutes > 0).toList();
    }

    private PersonEffect effect(Person person) {
        Map<String, Integer> knew = tasks(have, person.id());
        int moved = 0;
        for (Map.Entry<String, Integer> task : tasks(found, person.id()).entrySet()) {
            boolean known = before.containsKey(task.getKey().substring(0, task.getKey().indexOf('\t')));
            moved += known && !task.getValue().equals(knew.get(task.getKey())) ? 1 : 0;
        }
        return new PersonEffect(person.id(), moved, minutes(found, person.id()) - minutes(have, person.id()));
    }

    /** When the person begins each piece of work and each touch. */
    private static Map<String, Integer> tasks(Timetable timetable, String personId) {
        Map<String, Integer> tasks = new LinkedHashMap<>();
        timetable.steps().stream().filter(step -> step.work().stream().anyMatch(work -> work.personId().equals(personId)))
                .forEach(step -> tasks.put(step.stepId() + "\t", step.start()));
        timetable.touches().stream().filter(touch -> touch.personId().equals(personId))
                .forEach(touch -> tasks.put(touch.stepId() + "\t" + touch.at(), touch.when().start()));
        return tasks;
    }

    private static int minutes(Timetable timetable, String personId) {
        int work = timetable.steps().stream().flatMap(step -> step.work().stream()).filter(one -> one.personId().equals(personId))
                .flatMap(one -> one.spans().stream()).mapToInt(Span::minutes).sum();
        return work + timetable.touches().stream().filter(touch -> touch.personId().equals(personId)).map(PlacedTouch::when)
                .mapToInt(Span::minutes).sum();
    }
}
