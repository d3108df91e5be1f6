package crumbclock.bench.reference;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;

/**
 * What the exact solver came to.
 *
 * @param status  OPTIMAL, FEASIBLE, INFEASIBLE or UNKNOWN
 * @param value   of the best solution found; NaN without one
 * @param bound   no solution of the model is below it
 * @param seconds by the clock
 */
record Exact(String status, double value, double bound, double seconds, CpSolver solver) {

    /** As many as a search of Crumbclock uses threads. */
    private static final int WORKERS = 2;

    /** An empty model; the native library has to be there before. */
    static CpModel newModel() {
        Loader.loadNativeLibraries();
        return new CpModel();
    }

    static Exact solve(CpModel model, int seconds, long seed) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(WORKERS).setRandomSeed((int) seed);
        String wrong = model.validate();
        if (!wrong.isEmpty()) {
            throw new IllegalStateException("the exact solver's model is wrong: " + wrong);
        }
        CpSolverStatus status = solver.solve(model);
        boolean solved = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Exact(status.name(), solved ? solver.objectiveValue() : Double.NaN, solver.bestObjectiveBound(),
                solver.wallTime(), solver);
    }

    /** Value of an expression in the best solution; NaN without one. */
    double valueOf(LinearArgument expression) {
        return Double.isNaN(value) ? Double.NaN : solver.value(expression);
    }
}
