package crumbclock.bench.kitchen;

import crumbclock.bench.Stopwatch;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchListener;

/** Notes when the search first has a plan with all orders in it. What it reports is sound by construction. */
final class FirstPlan implements SearchListener {

    private final long notPossible;
    private final Stopwatch watch = new Stopwatch();
    private volatile double seconds = Double.NaN;
    private volatile double secondsToOnTime = Double.NaN;

    FirstPlan(Problem problem) {
        notPossible = problem.weights().notPossible();
    }

    @Override
    public void improved(long schedules, Cost best) {
        if (Double.isNaN(seconds) && best.medium() < notPossible) {
            seconds = watch.wallSeconds();
        }
        if (Double.isNaN(secondsToOnTime) && best.medium() == 0) {
            secondsToOnTime = watch.wallSeconds();
        }
    }

    /** Until all orders were placed; NaN when they never were. */
    double seconds() {
        return seconds;
    }

    /** Until none was late, either; NaN when that never came about. */
    double secondsToOnTime() {
        return secondsToOnTime;
    }
}
