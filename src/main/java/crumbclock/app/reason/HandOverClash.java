package crumbclock.app.reason;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Orders that could not be handed over in time even if every cake were ready (rule R16): nobody is there then, or
 * whoever is there is busy with another order's hand-over. Both orders of such a pair are concerned.
 */
final class HandOverClash {

    private final Problem problem;
    private final Timetable timetable;
    private final ClockWords words;
    private final Map<String, Step> steps;
    private final Map<String, List<Outcome.Reason>> reasons = new LinkedHashMap<>();

    private HandOverClash(Problem problem, Timetable timetable) {
        this.problem = problem;
        this.timetable = timetable;
        this.words = new ClockWords(problem.clock());
        this.steps = problem.steps().stream().collect(Collectors.toMap(Step::id, step -> step));
    }

    /** Reasons by order; orders without are missing. */
    static Map<String, List<Outcome.Reason>> reasons(Problem problem, SmallSearch search) {
        Problem handOvers = ProblemCut.handOversOnly(problem);
        var clash = new HandOverClash(handOvers, search.timetable(handOvers));
        for (Outcome outcome : clash.timetable.outcomes()) {
            if (!SmallSearch.isOnTime(outcome)) {
                clash.explain(clash.order(outcome.orderId()));
            }
        }
        return clash.reasons;
    }

    private void explain(Order order) {
        if (order.handOver().way() == HandOverWay.SET_ASIDE) {
            return;
        }
        List<Order> rivals = problem.orders().stream()
                .filter(other -> other != order && other.handOver().way() != HandOverWay.SET_ASIDE && stands(order, other)).toList();
        if (rivals.isEmpty()) {
            add(order, "nobody is there to " + action(order) + " " + window(order) + peopleThen(order));
            return;
        }
        for (Order rival : rivals) {
            // told from the side of whoever is tied up longer: the other one is who stands before a shut door
            boolean rivalIsLonger = busy(rival).minutes() >= busy(order).minutes();
            tell(rivalIsLonger ? order : rival, rivalIsLonger ? rival : order);
        }
    }

    private void tell(Order waiting, Order other) {
        String verb = other.handOver().way() == HandOverWay.DELIVERY ? " is out delivering " : " is handing over ";
        Span busy = busy(other);
        String when = " from " + words.time(busy.start(), busy.start()) + " to " + words.time(busy.start(), busy.end());
        String who = persons(other, waiting);
        add(waiting, "nobody is there to " + action(waiting) + " " + window(waiting) + ": " + who + verb + other.id() + when);
        add(other, "while " + who + verb + "it" + when + ", nobody is there to " + action(waiting, waiting.id()) + " "
                + window(waiting));
    }

    /** Whether the two cannot both be on time by the same hands or car, at the rival's place in the timetable. */
    private boolean stands(Order order, Order rival) {
        Step own = step(order);
        Step other = step(rival);
        boolean sharesHands = problem.kitchen().people().stream().anyMatch(person -> isThere(person, order)
                && person.hasSkill(skill(own)) && person.hasSkill(skill(other)));
        boolean sharesCar = own.equipment().stream().map(EquipmentNeed::poolId)
                .anyMatch(pool -> other.equipment().stream().anyMatch(need -> need.poolId().equals(pool)));
        Span busy = busy(rival);
        Span starts = starts(order);
        return (sharesHands || sharesCar) && starts.start() + minutes(order) > busy.start() && busy.end() > starts.end();
    }

    private boolean isThere(Person person, Order order) {
        Span starts = starts(order);
        var needed = new Span(starts.start(), starts.end() + minutes(order));
        return person.shifts().stream().anyMatch(shift -> shift.overlaps(needed));
    }

    /** Who hands the order over, in the timetable, or who might. */
    private String persons(Order order, Order waiting) {
        List<String> ids = findPlaced(order).stream().flatMap(placed -> placed.work().stream())
                .map(work -> work.personId()).toList();
        List<String> names = problem.kitchen().people().stream()
                .filter(person -> ids.isEmpty() ? isThere(person, waiting) : ids.contains(person.id()))
                .map(Person::name).toList();
        return names.isEmpty() ? "whoever hands over" : String.join(" or ", names);
    }

    private String peopleThen(Order order) {
        List<String> there = problem.kitchen().people().stream().filter(person -> isThere(person, order))
                .map(Person::name).toList();
        return there.isEmpty() ? ": no shift reaches into that time"
                : ": " + String.join(", ", there) + (there.size() == 1 ? " is" : " are") + " there only for a part of it, or on a break";
    }

    private void add(Order order, String sentence) {
        List<Outcome.Reason> own = reasons.computeIfAbsent(order.id(), id -> new ArrayList<>());
        var reason = new Outcome.Reason(Rule.R16, sentence);
        if (!own.contains(reason)) {
            own.add(reason);
        }
    }

    private static String action(Order order) {
        return action(order, "it");
    }

    private static String action(Order order, String what) {
        return order.handOver().way() == HandOverWay.DELIVERY ? "deliver " + what : "hand " + (what.equals("it") ? "it over"
                : "over " + what);
    }

    /** {@code between 09:30 and 10:15}, or {@code at 10:00}. */
    private String window(Order order) {
        HandOver handOver = order.handOver();
        return handOver.from() >= handOver.until() ? "at " + words.dayTime(handOver.until())
                : "between " + words.dayTime(handOver.from()) + " and " + words.time(handOver.from(), handOver.until());
    }

    /** Minutes at which the hand-over may begin without being early or late. */
    private static Span starts(Order order) {
        int latest = order.handOver().until() - order.handOver().offsetMinutes();
        return new Span(Math.min(order.handOver().from() - order.handOver().offsetMinutes(), latest), latest);
    }

    /** Where the hand-over stands when it is on time, else where it would stand at the latest. */
    private Span busy(Order order) {
        return findPlaced(order).stream().map(PlacedStep::span)
                .filter(span -> span.start() <= starts(order).end()).findFirst()
                .orElseGet(() -> new Span(starts(order).end(), starts(order).end() + minutes(order)));
    }

    private List<PlacedStep> findPlaced(Order order) {
        return timetable.steps().stream().filter(placed -> placed.stepId().equals(order.handOver().stepId())).toList();
    }

    private int minutes(Order order) {
        return step(order).handsOn().map(work -> work.minutes()).orElse(0);
    }

    private static String skill(Step step) {
        return step.handsOn().map(work -> work.skill()).orElse("");
    }

    private Step step(Order order) {
        return steps.get(order.handOver().stepId());
    }

    private Order order(String id) {
        return problem.orders().stream().filter(order -> order.id().equals(id)).findFirst().orElseThrow();
    }
}
