package crumbclock.app.replan;

import crumbclock.app.pace.FinishedDay;
import crumbclock.app.pace.LearnPaces;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayState;
import crumbclock.domain.order.Order;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.rules.Audit;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plans again from now, and changes as little as it must.
 *
 * <p>A plan that still holds stays as it is. Otherwise work goes on in its order, each step at its known time or as soon after it as it
 * can be ({@link Shift}). While timetables are left to be made, everything is planned anew at once, with the distance from the known plan in
 * the cost (wish W08), and then single orders and stretches of time while all else is pinned. The best of all, as audited,
 * is the answer. The same steps and seed give the same answer.
 */
public final class Replan {

    /** Shares of the timetables that may be made, in sixteenths. */
    private static final int WHOLE = 16;
    private static final int SHIFT = 4;
    private static final int FULL = 8;
    private static final int ROUND = 2;
    private static final int HELD = 1;
    private static final int SIDE = 6;
    private static final long OTHER_SEED = 500_009L;
    /** Steps of a problem of which a search from scratch soon makes something; in a larger one it comes last. */
    private static final int SMALL = 200;
    /** Without a number of steps, so many for a search that ends by the clock. */
    private static final long MOST_SCHEDULES = 20_000;

    private final Problem base;
    private final Plan oldPlan;
    private final OldPlan old;
    private final DayState before;
    private final DayLog log;
    private final int now;
    private final SearchLimits limits;
    private final SearchListener listener;
    private final int room;
    private final long total;
    /** Work that is done again though nobody wrote that it is lost, and repairs of what is not missed yet. */
    private final List<Loss> begunAgain = new ArrayList<>();
    private final Set<String> ahead = new LinkedHashSet<>();
    private Candidate best;
    private long schedules;

    private Replan(Problem base, Plan oldPlan, DayState before, DayLog log, int now, int room, SearchLimits limits, SearchListener listener) {
        this.base = base;
        this.oldPlan = oldPlan;
        this.old = new OldPlan(oldPlan.timetable());
        this.before = before;
        this.log = log;
        this.now = now;
        this.limits = limits;
        this.listener = listener;
        this.room = room;
        this.total = limits.mostSteps() == Long.MAX_VALUE ? MOST_SCHEDULES : limits.mostSteps();
    }

    /** Builds what planning again needs; otherwise it does so itself. */
    public static void prepare() {
        Audit.prepare();
    }

    /**
     * @param base    the problem that the old plan was made for
     * @param oldPlan that people have
     * @param now     minute from the problem's start
     */
    public static Replanned replan(Problem base, Plan oldPlan, DayLog log, int now, SearchLimits limits, SearchListener listener) {
        return replan(base, oldPlan, DayState.NONE, log, now, limits, listener);
    }

    /**
     * The same from a plan that was itself made while the day ran.
     *
     * @param base   with the batches that the old plan makes again ({@link DayProblem#again})
     * @param before of the old plan
     * @param log    of the whole day, from its beginning
     */
    public static Replanned replan(Problem base, Plan oldPlan, DayState before, DayLog log, int now, SearchLimits limits,
            SearchListener listener) {
        return new Replan(base, oldPlan, before, log, now, RestProblem.ROOM, limits, listener).run();
    }

    /**
     * The same for a kitchen in which room is scarce.
     *
     * @param room minutes for which a place on a shelf is kept free beyond the planned end of a stay that goes on; with 0 the others have
     *             more room, and a stay that would last longer than planned, with something else in its place by then, is found out by
     *             the audit
     */
    public static Replanned replan(Problem base, Plan oldPlan, DayLog log, int now, int room, SearchLimits limits, SearchListener listener) {
        return new Replan(base, oldPlan, DayState.NONE, log, now, room, limits, listener).run();
    }

    /**
     * Finds places for what the old plan does not know, such as one more order, and moves nothing else that can stay.
     *
     * @param base    a problem with more steps than the old plan has
     * @param oldPlan that people have
     * @param now     minute from the problem's start; what begins before that went as planned
     */
    public static Replanned fitIn(Problem base, Plan oldPlan, int now, SearchLimits limits, SearchListener listener) {
        return new Replan(base, oldPlan, DayState.NONE, DayLog.NOTHING, now, 0, limits, listener).fitted();
    }

    private Replanned fitted() {
        Situation situation = Situation.of(base, old, log, now, before.lostAt(), List.of(), Set.of());
        Set<String> unknown = new LinkedHashSet<>(situation.toDo());
        unknown.removeIf(id -> old.find(id).isPresent());
        keep(found(situation, old, unknown, part(WHOLE)));
        return finished(false);
    }

    private Replanned run() {
        var audit = Beside.begin(() -> Audit.audit(base, oldPlan.timetable()));
        Situation situation = Situation.of(base, old, log, now, before.lostAt(), List.of(), Set.of());
        keep(asItIs(situation));
        long known = audit.get().mediumCost();
        if (!isGood(known)) {
            best = null;
            boolean small = situation.problem().steps().size() <= SMALL;
            if (small) {
                fewCakes(situation, known);
            } else {
                manyCakes(situation, known);
            }
            if (!isGood(known)) {
                redo();
                startOver();
            }
            if (!small && isWorthwhile() && !stopped()) {
                keep(found(best.situation(), old, best.situation().toDo(), part(FULL)));
            }
            improve();
        }
        return finished(true);
    }

    private boolean isGood(long known) {
        return best != null && best.isSound() && best.audit().mediumCost() <= known;
    }

    private void keep(Candidate candidate) {
        schedules += candidate.schedules();
        if (candidate.isSound()) {
            listener.improved(schedules, new Cost(candidate.audit().mediumCost(), candidate.audit().softCost()));
        }
        if (best == null || candidate.compareTo(best) < 0) {
            best = candidate;
        }
    }

    /** The old plan as it stands, with the times that things really had. */
    private Candidate asItIs(Situation situation) {
        List<FixedStep> pins = Pins.of(situation.problem(), old, situation.happened(), now, Set.of());
        var rest = new RestProblem(situation.problem(), old, old, situation.happened(), now, pins, room);
        return Candidate.of(situation, rest, Merged.of(situation.problem(), old, situation.happened(), rest, old.timetable()), 0);
    }

    /** In a small kitchen a search from scratch soon makes something, too. It does not depend on the rest, so that it may run beside it. */
    private void fewCakes(Situation situation, long known) {
        SearchLimits half = part(FULL);
        var all = Beside.begin(() -> found(situation, old, situation.toDo(), half));
        keep(shifted(situation, old, true, true, 0, SHIFT));
        if (!isGood(known)) {
            var order = new OldPlan(best.timetable());
            keep(shifted(situation, order, true, false, 0, SHIFT));
            if (!isGood(known) && !stopped()) {
                // where it ends hangs more on how it begins than on its length
                keep(shifted(situation, order, false, false, 0, SHIFT));
            }
        }
        keep(all.get());
    }

    /** In a large one what is kept at its known time stands in the way of too much, unless little has happened: side by side without that. */
    private void manyCakes(Situation situation, long known) {
        keep(shifted(situation, old, true, true, 0, HELD));
        if (!isGood(known)) {
            var other = Beside.begin(() -> shifted(situation, old, true, false, OTHER_SEED, SIDE));
            keep(shifted(situation, old, true, false, 0, SIDE));
            keep(other.get());
        }
    }

    /** Orders that were possible and are not any more. */
    private List<Order> gone() {
        Set<String> were = new LinkedHashSet<>();
        oldPlan.timetable().outcomes().stream().filter(Outcome::possible).forEach(outcome -> were.add(outcome.orderId()));
        best.timetable().outcomes().stream().filter(Outcome::possible).forEach(outcome -> were.remove(outcome.orderId()));
        return best.problem().orders().stream().filter(order -> were.contains(order.id())).toList();
    }

    /** An order that is not possible any more goes on with a repair, or from its last good step, where that helps. */
    private void redo() {
        List<Order> gone = gone();
        if (gone.isEmpty() || stopped()) {
            return;
        }
        Situation known = best.situation();
        Problem rest = new RestProblem(known.problem(), old, old, known.happened(), now, List.of(), room).problem();
        Redo.collect(known, rest, gone, ahead, begunAgain);
        if (!ahead.isEmpty() || !begunAgain.isEmpty()) {
            keep(shifted(again(), new OldPlan(best.timetable()), true, false, 0, SHIFT));
            if (best.situation() == known) {
                ahead.clear();
                begunAgain.clear();
            }
        }
    }

    /** An order that is not possible any more is begun again from the start, where that helps. */
    private void startOver() {
        List<Order> gone = gone();
        gone.forEach(order -> order.cakes().forEach(cake -> begunAgain.add(new Loss(0, cake.finishStepId(), now, true))));
        if (!gone.isEmpty() && !stopped()) {
            keep(shifted(again(), new OldPlan(best.timetable()), true, false, 0, SHIFT));
        }
    }

    private Situation again() {
        return Situation.of(base, old, log, now, before.lostAt(), begunAgain, ahead);
    }

    /** Lets go of one order or one stretch of time after the other, those first that the change concerns. */
    private void improve() {
        for (Set<String> freed : new Neighbourhoods(best, old, now).all()) {
            if (!isWorthwhile() || stopped()) {
                return;
            }
            freed.retainAll(best.situation().toDo());
            keep(found(best.situation(), new OldPlan(best.timetable()), freed, part(ROUND)));
        }
    }

    private Candidate found(Situation situation, OldPlan from, Set<String> freed, SearchLimits most) {
        List<FixedStep> pins = Pins.of(situation.problem(), from, situation.happened(), now, freed);
        var rest = new RestProblem(situation.problem(), old, from, situation.happened(), now, pins, room);
        var result = PlanSearch.search(rest.problem(), most, SearchListener.stoppedBy(listener::stopAsked));
        return Candidate.of(situation, rest, Merged.of(situation.problem(), old, situation.happened(), rest, result.timetable()),
                result.schedules());
    }

    /**
     * @param anew  as {@link Shift} has it
     * @param share of all timetables, in sixteenths
     */
    private Candidate shifted(Situation situation, OldPlan order, boolean anew, boolean held, long plusSeed, int share) {
        var rest = new RestProblem(situation.problem(), old, old, situation.happened(), now, List.of(), room);
        var result = Shift.of(rest.problem(), situation, order, anew, held, limits.seed() + plusSeed, Math.max(1, total * share / WHOLE), this::stopped);
        return Candidate.of(situation, rest, Merged.of(situation.problem(), old, situation.happened(), rest, result.timetable()),
                result.schedules());
    }

    /** A search of its own needs some timetables before it finds anything. */
    private boolean isWorthwhile() {
        return total - schedules >= total / SHIFT;
    }

    private boolean stopped() {
        return listener.stopAsked() && best != null;
    }

    private SearchLimits part(int share) {
        long steps = Math.max(1, Math.min(total - schedules, total * share / WHOLE) / 2);
        long millis = limits.mostMillis() == Long.MAX_VALUE ? Long.MAX_VALUE : Math.max(1, limits.mostMillis() * share / WHOLE / 2);
        return new SearchLimits(limits.seed(), steps, millis, limits.unimprovedMillis());
    }

    private Replanned finished(boolean withBound) {
        var rest = new RestProblem(best.situation().problem(), old, old, best.situation().happened(), now, List.of(), room);
        Timetable timetable = Reasons.explained(best.problem(), rest.problem(), best.timetable());
        var audit = Audit.audit(best.problem(), timetable);
        List<Finding> inFact = audit.findings().stream().filter(finding -> !best.own().contains(finding)).toList();
        PaceReport soFar = LearnPaces.learn(base.kitchen(), List.of(new FinishedDay(base, oldPlan.timetable(), log)));
        Optional<LowerBound> bound = withBound ? DayBound.of(best.problem(), best.situation().happened(), now, timetable, !audit.isSound())
                : Optional.empty();
        Plan plan = new Plan(base.title(), timetable, audit.findings(), audit.cost(), audit.mediumCost(), audit.softCost(),
                new Plan.SearchNote(limits.seed(), schedules), bound);
        return new Replanned(best.problem(), plan, News.of(best.situation(), oldPlan, plan, inFact, soFar),
                DayProblem.state(base, before, log, best.situation(), best.problem()));
    }
}
