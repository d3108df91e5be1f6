package crumbclock.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.phase.PhaseConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.domain.problem.Weights;
import crumbclock.search.model.DecodeDesk;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkOrder;
import crumbclock.search.model.WorkPlan;
import crumbclock.search.model.WorkPlanScore;
import crumbclock.search.move.OrderMoves;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Searches one direction: simulated annealing over the order of work in three chained phases, each longer and
 * therefore cooling more slowly than the one before.
 */
final class DirectedSearch {

    /** Shares of the budget; a single long annealing is poor early, a single short one is poor late. */
    private static final int[] PHASES = {1, 4, 10};

    private final DecodeDesk desk;
    private final SearchLimits limits;
    private final Progress progress;
    private int[] best;
    private Cost bestCost;

    DirectedSearch(CompiledProblem compiled, SearchLimits limits, Progress progress) {
        this.desk = new DecodeDesk(compiled);
        this.limits = limits;
        this.progress = progress;
    }

    /** First orders of work; afterwards there is a result, whatever happens next. */
    void begin() {
        for (int[] order : StartOrders.of(desk.compiled())) {
            keep(order, desk.weigh(order));
        }
    }

    private void keep(int[] order, Cost cost) {
        if (bestCost == null || cost.compareTo(bestCost) < 0) {
            best = order;
            bestCost = cost;
            progress.improved(desk.decoder().schedules(), cost);
        }
    }

    /** Searches until a limit is reached or the listener wants to stop. */
    void run() {
        if (best.length < 2 || progress.stopAsked()) {
            return;
        }
        Solver<WorkPlan> solver = SolverFactory.<WorkPlan>create(config()).buildSolver();
        desk.watch(cost -> {
            if (progress.stopAsked() && solver.isSolving()) {
                solver.terminateEarly();
            }
        });
        solver.addEventListener(event -> {
            HardMediumSoftLongScore score = event.getNewBestSolution().getScore();
            Cost cost = new Cost(-score.mediumScore(), -score.softScore());
            if (cost.compareTo(bestCost) < 0) {
                keep(indices(event.getNewBestSolution()), cost);
            }
        });
        WorkPlan found = solver.solve(new WorkPlan(desk, Arrays.stream(best).mapToObj(UnitRef::new).toList()));
        desk.watch(cost -> {
        });
        HardMediumSoftLongScore score = found.getScore();
        keep(indices(found), new Cost(-score.mediumScore(), -score.softScore()));
    }

    private static int[] indices(WorkPlan plan) {
        return plan.getOrder().getSequence().stream().mapToInt(UnitRef::index).toArray();
    }

    private SolverConfig config() {
        List<PhaseConfig> phases = new ArrayList<>();
        int whole = Arrays.stream(PHASES).sum();
        Weights weights = desk.compiled().problem.weights();
        for (int share : PHASES) {
            TerminationConfig end = new TerminationConfig();
            if (limits.mostSteps() != Long.MAX_VALUE) {
                end.setMoveCountLimit(Math.max(1, limits.mostSteps() * share / whole));
            }
            if (limits.mostMillis() != Long.MAX_VALUE) {
                end.setMillisecondsSpentLimit(Math.max(1, limits.mostMillis() * share / whole));
            }
            // ten late minutes, and about an hour of a weak wish
            String temperature = "0hard/" + Math.max(1, 10 * weights.lateMinute()) + "medium/"
                    + Math.max(1, 60 * Math.max(weights.staleMinute(), weights.endMinute())) + "soft";
            phases.add(new LocalSearchPhaseConfig()
                    .withMoveSelectorConfig(new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(OrderMoves.class))
                    .withAcceptorConfig(new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(temperature))
                    .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
                    .withTerminationConfig(end));
        }
        SolverConfig config = new SolverConfig()
                .withSolutionClass(WorkPlan.class)
                .withEntityClasses(WorkOrder.class)
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig().withEasyScoreCalculatorClass(WorkPlanScore.class))
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withRandomSeed(limits.seed());
        config.setPhaseConfigList(phases);
        if (limits.unimprovedMillis() != Long.MAX_VALUE) {
            config.setTerminationConfig(new TerminationConfig().withUnimprovedMillisecondsSpentLimit(limits.unimprovedMillis()));
        }
        return config;
    }

    Cost bestCost() {
        return bestCost;
    }

    long schedules() {
        return desk.decoder().schedules();
    }

    /** The best timetable, decoded once more. */
    SearchResult result(long schedules) {
        Cost cost = desk.weigh(best);
        return new SearchResult(new TimetableBuilder(desk.decoder()).build(), cost, schedules);
    }
}
