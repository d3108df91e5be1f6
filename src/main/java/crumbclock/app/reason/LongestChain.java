package crumbclock.app.reason;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An order's steps one after another as fast as they go at all: least waits and least lengths, hands and rooms without
 * end (rule R01). When even this is too long, nothing but another method or another time helps.
 */
final class LongestChain {

    private static final int LINKS_TOLD = 4;

    private final Problem problem;
    private final Order order;
    private final ClockWords words;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, Integer> start = new HashMap<>();
    private final Map<String, Wait> heldUpBy = new HashMap<>();

    private LongestChain(Problem problem, Order order) {
        this.problem = ProblemCut.keeping(problem, one -> one.id().equals(order.id()));
        this.order = order;
        this.words = new ClockWords(problem.clock());
        this.problem.steps().forEach(step -> {
            steps.put(step.id(), step);
            start.put(step.id(), Math.max(0, step.earliest()));
        });
    }

    /** Rule R01 with the longest links, when the chain is too long for the time there is. */
    static Optional<Outcome.Reason> tooLong(Problem problem, Order order) {
        var chain = new LongestChain(problem, order);
        chain.push();
        return chain.reason();
    }

    /** Each round settles at least one step for good; waits that go round in a circle end it all the same. */
    private void push() {
        boolean moved = true;
        for (int round = 0; moved && round <= steps.size(); round++) {
            moved = false;
            for (Wait wait : problem.waits()) {
                int earliest = end(wait.fromStepId()) + wait.leastMinutes();
                if (earliest > start.get(wait.toStepId())) {
                    start.put(wait.toStepId(), earliest);
                    heldUpBy.put(wait.toStepId(), wait);
                    moved = true;
                }
            }
        }
    }

    private Optional<Outcome.Reason> reason() {
        boolean setAside = order.handOver().stepId().isEmpty();
        String last = setAside ? order.cakes().stream().map(Cake::finishStepId)
                .max(Comparator.comparingInt(this::end)).orElseThrow() : order.handOver().stepId();
        int moment = setAside ? end(last) : start.get(last) + order.handOver().offsetMinutes();
        int until = order.handOver().until();
        if (moment <= until) {
            return Optional.empty();
        }
        List<Step> chain = chainTo(last);
        int first = start.get(chain.get(0).id());
        return Optional.of(new Outcome.Reason(Rule.R01, "its steps need at least " + ClockWords.duration(moment - first)
                + " one after another up to the hand-over (" + longestLinks(chain, setAside ? "" : last)
                + "), but there are only " + ClockWords.duration(Math.max(0, until - first))
                + (first > 0 ? " from " + words.dayTime(first) : "") + " until " + words.dayTime(until)));
    }

    private List<Step> chainTo(String last) {
        List<Step> chain = new ArrayList<>();
        String id = last;
        chain.add(steps.get(id));
        while (heldUpBy.containsKey(id) && chain.size() <= steps.size()) {
            id = heldUpBy.get(id).fromStepId();
            chain.add(steps.get(id));
        }
        Collections.reverse(chain);
        return chain;
    }

    /** The longest steps and waits of the chain, in its order; of the hand-over only what lies before its moment. */
    private String longestLinks(List<Step> chain, String handOverId) {
        record Link(int at, String text, int minutes) {
        }
        List<Link> links = new ArrayList<>();
        for (Step step : chain) {
            Wait wait = heldUpBy.get(step.id());
            if (wait != null && step != chain.get(0)) {
                links.add(new Link(links.size(), "wait before " + step.name(), wait.leastMinutes()));
            }
            links.add(new Link(links.size(), step.name(),
                    step.id().equals(handOverId) ? order.handOver().offsetMinutes() : length(step)));
        }
        List<String> told = links.stream().filter(link -> link.minutes() > 0)
                .sorted(Comparator.comparingInt(Link::minutes).reversed().thenComparingInt(Link::at)).limit(LINKS_TOLD)
                .sorted(Comparator.comparingInt(Link::at))
                .map(link -> link.text() + " " + ClockWords.duration(link.minutes())).toList();
        return (links.size() > told.size() ? "longest: " : "") + String.join(", ", told);
    }

    private int end(String stepId) {
        return start.get(stepId) + length(steps.get(stepId));
    }

    private int length(Step step) {
        return step.handsOn().map(this::workMinutes)
                .orElseGet(() -> step.putInMinutes() + step.leastMinutes() + step.takeOutMinutes());
    }

    /** At the pace of the fastest people with the skill; a team is as fast as its slowest. */
    private int workMinutes(HandsOn work) {
        List<Integer> minutes = problem.kitchen().people().stream().filter(person -> person.hasSkill(work.skill()))
                .map((Person person) -> person.minutesAtOwnPace(work.workKind(), work.minutes())).sorted().toList();
        return minutes.size() < work.people() ? work.minutes() : minutes.get(Math.max(0, work.people() - 1));
    }
}
