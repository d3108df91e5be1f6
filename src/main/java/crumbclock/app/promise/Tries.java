package crumbclock.app.promise;

import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.bound.Bound;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.domain.promise.Toll;
import crumbclock.domain.work.Step;
import crumbclock.rules.Audit;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plans the new order beside the others, from a minute on and at a price; what comes out is audited against the problem as it is. */
final class Tries {

    /** Most changes in a look for steps that should wait. */
    private static final long CHANGES = 2_000;

    private final Problem asked;
    private final Plan have;
    private final Plan start;
    private final String orderId;
    private final SearchLimits limits;
    private final SearchListener listener;
    private final Terms terms;

    /** @param asked with the new order, as it is wished */
    Tries(Problem asked, Plan have, String orderId, SearchLimits limits, SearchListener listener) {
        this(asked, have, have, orderId, limits, listener);
    }

    private Tries(Problem asked, Plan have, Plan start, String orderId, SearchLimits limits, SearchListener listener) {
        this.asked = asked;
        this.have = have;
        this.start = start;
        this.orderId = orderId;
        this.limits = limits;
        this.listener = listener;
        this.terms = new Terms(asked, have, orderId);
    }

    /** The same for another kitchen or another way to make the order. */
    Tries in(Problem other) {
        return new Tries(other, have, start, orderId, limits, listener);
    }

    /** The same from a plan with the new order in it, that is to be changed little; what it costs is still told against the plan that people have. */
    Tries from(PromisedPlan plan) {
        return new Tries(asked, have, plan.plan(), orderId, limits, listener);
    }

    /** The same with other chances. */
    Tries withSeed(long seed) {
        return new Tries(asked, have, start, orderId, new SearchLimits(seed, limits.mostSteps(), limits.mostMillis(),
                limits.unimprovedMillis()), listener);
    }

    /** Better plans first: an earlier hand-over, then less for the others to bear, then fewer points. */
    static final Comparator<PromisedPlan> EARLIEST = Comparator.comparingInt((PromisedPlan one) -> one.own().handMinute())
            .thenComparing(one -> one.toll().price()).thenComparingInt(one -> one.toll().laterMinutes())
            .thenComparingLong(one -> one.plan().softCost());

    /** Where the time is settled: less for the others to bear first, then fewer points, kept to the known plan as they are. */
    static final Comparator<PromisedPlan> CHEAPEST = Comparator.comparing((PromisedPlan one) -> one.toll().price())
            .thenComparingInt(one -> one.toll().laterMinutes()).thenComparingLong(one -> one.plan().softCost());

    /**
     * The earliest hand-over that is found at a price.
     *
     * @param now   what begins before stays as people know it; nothing of the new order begins before
     * @param from  not handed over before this minute
     * @param until minute up to which an earlier hand-over is no better
     */
    Optional<PromisedPlan> earliest(Price price, int now, int from, int until) {
        return heldBack(inOrder(price, now, from, until), price, now, from, until);
    }

    private Optional<PromisedPlan> inOrder(Price price, int now, int from, int until) {
        Problem problem = terms.of(price, from, until);
        List<Replanned> found = new ArrayList<>();
        if (price == Price.NOBODY_WORSE) {
            found.add(Replan.fitIn(problem, start, now, limits, listener));
        }
        found.add(Replan.replan(problem, start, DayLog.NOTHING, now, 0, limits, listener));
        Optional<PromisedPlan> best = best(found, price, from, until);
        return best.isPresent() || nothingRuns(now) ? best
                : best(List.of(Replan.replan(problem, start, DayLog.NOTHING, now, limits, listener)), price, from, until);
    }

    /** A plan for a small problem is looked at once more for steps that should wait; empty where it is empty. */
    private Optional<PromisedPlan> heldBack(Optional<PromisedPlan> known, Price price, int now, int from, int until) {
        if (known.isEmpty() || !isClosed(known.get().problem(), now)) {
            return known;
        }
        Problem begun = known.get().problem();
        Problem problem = terms.of(price, from, until).withSteps(begun.steps()).withFixedSteps(begun.fixedSteps()).withKept(begun.kept());
        Timetable before = known.get().plan().timetable();
        return HoldBack.search(problem, before, limits.seed(), Math.min(limits.mostSteps(), CHANGES), listener::stopAsked)
                .flatMap(timetable -> made(problem, begun.steps(), timetable, known.get().plan().search(), from, until))
                .filter(one -> isAt(price, one) && EARLIEST.compare(one, known.get()) < 0).or(() -> known);
    }

    /** Whether it is small, and nothing that has begun goes on or is held for what is still to come. */
    private boolean isClosed(Problem problem, int now) {
        Set<String> begun = problem.fixedSteps().stream().map(one -> one.step().stepId()).collect(Collectors.toSet());
        return nothingRuns(now) && problem.steps().size() - begun.size() <= HoldBack.MOST_STEPS
                && problem.steps().stream().filter(step -> begun.contains(step.id())).flatMap(step -> step.equipment().stream())
                        .allMatch(need -> begun.contains(need.untilStepId()));
    }

    private Optional<PromisedPlan> best(List<Replanned> found, Price price, int from, int until) {
        return found.stream().map(one -> promised(one, from, until)).flatMap(Optional::stream)
                .filter(one -> isAt(price, one)).min(EARLIEST);
    }

    private static boolean isAt(Price price, PromisedPlan plan) {
        return plan.toll().price().compareTo(price) <= 0 && !plan.toll().dropsAny();
    }

    /** Then no place has to be kept free for what stays longer than planned. */
    private boolean nothingRuns(int now) {
        return start.timetable().steps().stream().noneMatch(step -> step.start() < now && now <= step.end());
    }

    /** A plan that hands over in the window; empty when none was found. */
    Optional<PromisedPlan> within(Price price, int now, int from, int until) {
        return inOrder(price, now, from, until).filter(one -> one.own().handMinute() <= until);
    }

    /** Whether a plan that was made for another kitchen holds in this one. */
    Optional<PromisedPlan> holding(PromisedPlan plan) {
        int hand = plan.own().handMinute();
        return audited(terms.promised(hand, hand), asked.steps(), plan.problem(), plan.plan().timetable(), plan.plan().search());
    }

    /** What no plan can have earlier, whatever it costs: a minute of hand-over, −1 when no plan can have it at all. */
    int notBefore(int now) {
        Problem open = terms.of(Price.ANY_PRICE, now, now);
        OrderBound bound = Bound.of(open).orders().stream().filter(one -> one.orderId().equals(orderId)).findFirst().orElseThrow();
        return bound.possible() ? Math.max(now, bound.handMinute()) : -1;
    }

    /** The plan against the problem as it is, with the window that can be promised; empty when it does not hold, or leaves the new order out. */
    private Optional<PromisedPlan> promised(Replanned found, int from, int until) {
        return isGood(found.plan().findings()) ? made(found.problem(), found.problem().steps(), found.plan().timetable(), found.plan().search(), from, until)
                : Optional.empty();
    }

    private Optional<PromisedPlan> made(Problem problem, List<Step> steps, Timetable timetable, Plan.SearchNote search, int from, int until) {
        return timetable.outcomes().stream().filter(one -> one.orderId().equals(orderId) && one.possible()).map(Outcome::handMinute).findFirst()
                .flatMap(hand -> audited(terms.promised(Math.min(from, hand), Math.max(until, hand)), steps, problem, timetable, search));
    }

    /** What has happened by the known plan stays broken; nothing else may be. */
    private boolean isGood(List<Finding> findings) {
        return have.findings().containsAll(findings);
    }

    /** @param found holds what has begun, and from when on the known plan is kept */
    private Optional<PromisedPlan> audited(Problem own, List<Step> steps, Problem found, Timetable planned, Plan.SearchNote search) {
        Problem problem = own.withSteps(steps).withFixedSteps(fixed(found)).withKept(KeptPlan.of(have.timetable(), found.kept().now()));
        Timetable timetable = planned.withEachOutcome(one -> told(problem, one));
        var audit = Audit.audit(problem, timetable);
        if (!isGood(audit.findings())) {
            return Optional.empty();
        }
        var audited = new Plan(own.title(), timetable, audit.findings(), audit.cost(), audit.mediumCost(), audit.softCost(), search);
        Outcome outcome = timetable.outcomes().stream().filter(one -> one.orderId().equals(orderId)).findFirst().orElseThrow();
        Toll toll = Tolls.of(problem, have.timetable(), timetable);
        return Optional.of(new PromisedPlan(problem, audited, outcome, toll,
                PlanDifference.first(have.timetable(), timetable, problem.clock().horizonMinutes())));
    }

    /** What has begun by now, and what is pinned for later. */
    private List<FixedStep> fixed(Problem found) {
        Set<String> begun = found.fixedSteps().stream().map(one -> one.step().stepId()).collect(Collectors.toSet());
        return Stream.concat(found.fixedSteps().stream(), asked.fixedSteps().stream().filter(one -> !begun.contains(one.step().stepId()))).toList();
    }

    /** Late and buffer as the order itself wants it, not as the search was told. */
    private Outcome told(Problem problem, Outcome one) {
        if (!one.possible()) {
            return one;
        }
        Order order = problem.orders().stream().filter(other -> other.id().equals(one.orderId())).findFirst().orElseThrow();
        int until = order.handOver().until();
        int late = Math.max(0, one.handMinute() - until);
        int buffer = order.handOver().way() == HandOverWay.SET_ASIDE ? until - one.readyMinute() : one.bufferMinutes();
        var known = have.timetable().outcomes().stream().filter(other -> other.orderId().equals(one.orderId())).findFirst();
        List<Outcome.Reason> reasons = late == 0 ? List.of() : known.isPresent() && known.get().lateMinutes() >= late
                ? known.get().reasons() : List.of(new Outcome.Reason(Rule.R16, "it gives way to order " + orderId));
        return new Outcome(one.orderId(), true, one.readyMinute(), one.handMinute(), buffer, late, reasons, one.waitsFor());
    }
}
