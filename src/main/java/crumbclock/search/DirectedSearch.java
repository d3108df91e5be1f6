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
import crumbclock.domain.problem.Weights;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.search.model.DecodeDesk;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkOrder;
import crumbclock.search.model.WorkPlan;
import crumbclock.search.model.WorkPlanScore;
import crumbclock.search.move.OrderMoves;
import java.util.Arrays;

/**
 * Searches one direction: simulated annealing over the order of work in three chained phases, each longer and
 * therefore cooling more slowly than the one before.
 *
 * <p>The search weighs quick decodes, which may break something; a new best that does is mended before it counts.
 * What the mending found out about an order (no room for its buffer, to be placed as a whole, not possible) holds for
 * the quick decodes of the next phase.
 */
final class DirectedSearch {

    /** Shares of the budget; a single long annealing is poor early, a single short one is poor late. */
    private static final int[] PHASES = {1, 4, 10};

    private final DecodeDesk desk;
    private final SearchLimits limits;
    private final Progress progress;
    private int[] best;
    private int[] bestStages;
    private boolean bestIsMended;
    private Cost bestCost;

    DirectedSearch(CompiledProblem compiled, SearchLimits limits, Progress progress) {
        this.desk = new DecodeDesk(compiled);
        this.limits = limits;
        this.progress = progress;
    }

    /** First orders of work; afterwards there is a result, whatever happens next. */
    void begin() {
        for (int[] order : StartOrders.of(desk.compiled())) {
            keepMended(order);
        }
    }

    private void keepMended(int[] order) {
        Cost cost = desk.mend(order);
        keep(order, cost, desk.decoder().stages(), true);
    }

    private void keep(int[] order, Cost cost, int[] stages, boolean mended) {
        if (bestCost == null || cost.compareTo(bestCost) < 0) {
            best = order;
            bestStages = stages;
            bestIsMended = mended;
            bestCost = cost;
            progress.improved(desk.decoder().schedules(), cost);
        }
    }

    /** Searches until a limit is reached or the listener wants to stop. */
    void run() {
        int whole = Arrays.stream(PHASES).sum();
        for (int phase = 0; phase < PHASES.length && best.length > 1 && !progress.stopAsked(); phase++) {
            run(PHASES[phase], whole, phase);
        }
    }

    private void run(int share, int whole, int phase) {
        int[] stages = bestStages.clone();
        desk.place(stages);
        Solver<WorkPlan> solver = SolverFactory.<WorkPlan>create(config(share, whole, phase)).buildSolver();
        desk.watch(() -> {
            if (progress.stopAsked() && solver.isSolving()) {
                solver.terminateEarly();
            }
        });
        solver.addEventListener(event -> consider(event.getNewBestSolution(), stages));
        consider(solver.solve(new WorkPlan(desk, Arrays.stream(best).mapToObj(UnitRef::new).toList())), stages);
        desk.watch(() -> {
        });
    }

    private void consider(WorkPlan plan, int[] stages) {
        HardMediumSoftLongScore score = plan.getScore();
        int[] order = plan.getOrder().getSequence().stream().mapToInt(UnitRef::index).toArray();
        if (score.hardScore() == 0) {
            keep(order, new Cost(-score.mediumScore(), -score.softScore()), stages, false);
        } else if (!Arrays.equals(order, best)) {
            keepMended(order);
        }
    }

    private SolverConfig config(int share, int whole, int phase) {
        Weights weights = desk.compiled().problem.weights();
        TerminationConfig end = new TerminationConfig();
        if (limits.mostSteps() != Long.MAX_VALUE) {
            end.setMoveCountLimit(Math.max(1, limits.mostSteps() * share / whole));
        }
        if (limits.mostMillis() != Long.MAX_VALUE) {
            end.setMillisecondsSpentLimit(Math.max(1, limits.mostMillis() * share / whole));
        }
        if (limits.unimprovedMillis() != Long.MAX_VALUE) {
            end.setUnimprovedMillisecondsSpentLimit(limits.unimprovedMillis());
        }
        // a few broken minutes, ten late minutes, and about an hour of a weak wish
        String temperature = "10hard/" + Math.max(1, 10 * weights.lateMinute()) + "medium/"
                + Math.max(1, 60 * Math.max(weights.staleMinute(), weights.endMinute())) + "soft";
        return new SolverConfig()
                .withSolutionClass(WorkPlan.class)
                .withEntityClasses(WorkOrder.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(WorkPlanScore.class))
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withRandomSeed(limits.seed() + phase)
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(OrderMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(temperature))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                        .withTerminationConfig(end));
    }

    Cost bestCost() {
        return bestCost;
    }

    String note() { return bestIsMended + " " + Arrays.toString(bestStages); }

    long schedules() {
        return desk.decoder().schedules();
    }

    /** The best timetable, decoded once more. */
    SearchResult result(long schedules) {
        Cost cost = bestIsMended ? desk.mend(best) : desk.again(best, bestStages);
        return new SearchResult(new TimetableBuilder(desk.decoder()).build(), cost, schedules);
    }
}
