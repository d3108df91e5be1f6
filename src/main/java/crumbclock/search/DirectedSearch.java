package crumbclock.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Weights;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.search.model.DecodeDesk;
import crumbclock.search.model.DecodeDesk.Weight;
import crumbclock.search.model.OrderWay;
import crumbclock.search.model.Tactics;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkOrder;
import crumbclock.search.model.WorkPlan;
import crumbclock.search.model.WorkPlanScore;
import crumbclock.search.move.OrderMoves;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Searches one direction: simulated annealing over the order of work, in phases ({@link Tactics}), the last ones longer, cooling
 * more slowly, from the best plan so far.
 *
 * <p>The search weighs quick decodes, which may break something; a new best that does is mended before it counts.
 * What the mending found out (orders that need another way or are not possible, tasks that must not start too early)
 * holds for the quick decodes of the next phase.
 */
final class DirectedSearch {

    /** A plan that breaks more minutes than this is not worth mending. */
    private static final int MOST_BROKEN = 600;

    private static final long COMPANION_SEED = 1_000_003L;
    private static final int MOST_SAMPLES = 60;
    private static final int FRESH_SAMPLES = 12;
    /** Samples × units: a thousand cakes need their first plan soon. */
    private static final int SAMPLED_UNITS = 6_000;
    /** Larger kitchens get their first plan from one start order: mending a bad one may take longer than all the search. */
    private static final int MOST_UNITS_OF_ALL_STARTS = 400;

    private final Tactics tactics;
    private final DecodeDesk desk;
    private final boolean[] hopeless;
    private final SearchLimits limits;
    private final Progress progress;
    private int[] best;
    private int[] bestWays;
    private int[] bestBounds;
    private Cost bestCost;
    /** Of a mended best plan; any other is found again by a quick decode. */
    private Timetable bestTimetable;

    DirectedSearch(CompiledProblem compiled, SearchLimits limits, Progress progress) {
        this.tactics = Tactics.of(compiled);
        this.desk = new DecodeDesk(compiled, tactics.fineness());
        this.hopeless = new boolean[compiled.orders.length];
        this.limits = limits;
        this.progress = progress;
    }

    /**
     * First orders of work; afterwards there is a result, whatever happens next.
     *
     * @return false when another search has a plan and the time was up before this one had its own
     */
    boolean begin() {
        List<int[]> orders = StartOrders.of(desk.compiled());
        boolean all = desk.compiled().units.fine.length <= MOST_UNITS_OF_ALL_STARTS;
        orders.stream().limit(all ? orders.size() : 1).forEach(this::keepMended);
        if (best == null) {
            return false;
        }
        for (int order = 0; order < hopeless.length && !progress.stopAsked(); order++) {
            hopeless[order] = bestWays[order] == Decoder.LEFT_OUT && !desk.isPossibleAlone(orders.get(0), order);
        }
        sample();
        return true;
    }

    /** Weighs orders of work by chance, as many as cost little, and mends the most promising. */
    private void sample() {
        long samples = Math.min(Math.min(limits.mostSteps(), MOST_SAMPLES), SAMPLED_UNITS / Math.max(1, best.length));
        if (samples > 0) {
            keepMended(promising(new Random(limits.seed()), samples));
        }
    }

    private int[] promising(Random random, long samples) {
        int[] ways = freshWays();
        desk.bound(new int[desk.compiled().tasks.length]);
        Weight lightest = null;
        int[] promising = best;
        for (long sample = 0; sample < samples && !progress.stopAsked(); sample++) {
            int[] order = StartOrders.random(desk.compiled(), random);
            Weight weight = desk.weigh(order, ways);
            if (lightest == null || weight.compareTo(lightest) < 0) {
                lightest = weight;
                promising = order;
            }
        }
        return promising;
    }

    /** The ways of the best plan so far; what it leaves out is tried again, unless it is not possible even alone. */
    private int[] hopefulWays() {
        int[] ways = bestWays.clone();
        for (int order = 0; order < ways.length; order++) {
            if (ways[order] == Decoder.LEFT_OUT && !hopeless[order]) {
                ways[order] = desk.compiled().mirrored ? Decoder.BUFFERED : Decoder.SPLIT;
            }
        }
        return ways;
    }

    private int[] freshWays() {
        int[] ways = new int[hopeless.length];
        for (int order = 0; order < ways.length; order++) {
            ways[order] = hopeless[order] ? Decoder.LEFT_OUT : desk.compiled().mirrored ? Decoder.BUFFERED : Decoder.SPLIT;
        }
        return ways;
    }

    private void keepMended(int[] order) {
        Optional<Cost> cost = desk.mend(order, () -> progress.hasPlan() && progress.stopAsked());
        if (cost.isPresent() && keep(order, cost.get(), desk.decoder().ways(), desk.decoder().bounds())) {
            bestTimetable = new TimetableBuilder(desk.decoder()).build();
        }
    }

    private boolean keep(int[] order, Cost cost, int[] ways, int[] bounds) {
        boolean better = bestCost == null || cost.compareTo(bestCost) < 0;
        if (better) {
            bestTimetable = null;
            best = order;
            bestWays = ways;
            bestBounds = bounds;
            bestCost = cost;
            progress.improved(desk.schedules(), cost);
        }
        return better;
    }

    Tactics tactics() {
        return tactics;
    }

    /** Searches for the phase's share of the limits, or until the listener wants to stop. */
    void run(int phase) {
        if (best.length > 1 && !progress.stopAsked()) {
            anneal(phase);
        }
    }

    /** Another search of the same direction that goes on from this one's best plan with other random choices. */
    DirectedSearch companion() {
        SearchLimits other = new SearchLimits(limits.seed() + COMPANION_SEED, limits.mostSteps(), limits.mostMillis(),
                limits.unimprovedMillis());
        DirectedSearch companion = new DirectedSearch(desk.compiled(), other, progress);
        System.arraycopy(hopeless, 0, companion.hopeless, 0, hopeless.length);
        companion.best = best;
        companion.bestWays = bestWays;
        companion.bestBounds = bestBounds;
        companion.bestCost = bestCost;
        companion.bestTimetable = bestTimetable;
        return companion;
    }

    boolean isBackward() {
        return desk.compiled().mirrored;
    }

    private void anneal(int phase) {
        boolean fresh = phase > 0 && !Tactics.goesOn(phase);
        int[] start = fresh ? promising(new Random(limits.seed() + phase), FRESH_SAMPLES) : best;
        int[] bounds = fresh ? new int[bestBounds.length] : bestBounds;
        desk.bound(bounds);
        Solver<WorkPlan> solver = SolverFactory.<WorkPlan>create(config(phase)).buildSolver();
        desk.watch(() -> {
            if (progress.stopAsked() && solver.isSolving()) {
                solver.terminateEarly();
            }
        });
        solver.addEventListener(event -> consider(event.getNewBestSolution(), bounds));
        List<UnitRef> sequence = Arrays.stream(start).mapToObj(UnitRef::new).toList();
        consider(solver.solve(new WorkPlan(desk, sequence, fresh ? freshWays() : hopefulWays())), bounds);
        desk.watch(() -> {
        });
    }

    /** Mends a new best plan of the solver when it is not sound, and keeps it when it is better than all before. */
    private void consider(WorkPlan plan, int[] bounds) {
        HardMediumSoftLongScore score = plan.getScore();
        int[] order = plan.getOrder().getSequence().stream().mapToInt(UnitRef::index).toArray();
        int[] ways = plan.getWays().stream().mapToInt(OrderWay::getWay).toArray();
        Cost cost = desk.again(order, ways, bounds);
        if (desk.isSound()) {
            keep(order, cost, ways, bounds);
        } else if (score.hardScore() > -MOST_BROKEN) {
            keepMended(order);
        }
    }

    SolverConfig config(int phase) {
        Weights weights = desk.compiled().problem.weights();
        TerminationConfig end = new TerminationConfig();
        if (limits.mostSteps() != Long.MAX_VALUE) {
            end.setMoveCountLimit(Tactics.share(tactics.movesFor(limits.mostSteps()), phase));
        }
        if (limits.mostMillis() != Long.MAX_VALUE) {
            end.setMillisecondsSpentLimit(Tactics.share(limits.mostMillis(), phase));
        }
        // while an order is late, a long search without luck is still worth its time
        if (limits.unimprovedMillis() != Long.MAX_VALUE && bestCost.medium() == 0) {
            end.setUnimprovedMillisecondsSpentLimit(limits.unimprovedMillis());
        }
        // a few broken minutes, ten late minutes, and what the tactics say of the wishes
        double wishes = (double) tactics.staleMinutes() * weights.staleMinute() + tactics.stepShare() * stepMinutes() * weights.endMinute();
        String temperature = "10hard/" + Math.max(1, 10 * weights.lateMinute()) + "medium/"
                + Math.max(1, Math.round(tactics.fineness() * wishes)) + "soft";
        return new SolverConfig()
                .withSolutionClass(WorkPlan.class)
                .withEntityClasses(WorkOrder.class, OrderWay.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(WorkPlanScore.class))
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withRandomSeed(limits.seed() + phase)
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(OrderMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(temperature))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                        .withTerminationConfig(end));
    }

    /** Mean length of a step: what one exchange may change about the end of all work. */
    private int stepMinutes() {
        return (int) Arrays.stream(desk.compiled().tasks)
                .mapToInt(task -> task.works ? task.workerMinutes.length == 0 ? 0 : task.workerMinutes[0] : task.leastLength())
                .average().orElse(0);
    }

    Cost bestCost() {
        return bestCost;
    }

    long schedules() {
        return desk.schedules();
    }

    /** The best timetable. */
    SearchResult result(long schedules) {
        if (bestTimetable == null) {
            desk.again(best, bestWays, bestBounds);
            bestTimetable = new TimetableBuilder(desk.decoder()).build();
        }
        return new SearchResult(bestTimetable, bestCost, schedules);
    }
}
