package crumbclock.app.replan;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.List;
import java.util.function.UnaryOperator;

/** Copies of a problem that differ in a little. */
final class Problems {

    private Problems() {
    }

    static Problem withKitchen(Problem problem, Kitchen kitchen) {
        return new Problem(problem.title(), problem.clock(), kitchen, problem.orders(), problem.batches(), problem.steps(),
                problem.waits(), problem.coldLimits(), problem.lifeLimits(), problem.freshnessWishes(), problem.fixedSteps(),
                problem.weights(), problem.kept());
    }

    static Problem withEachStep(Problem problem, UnaryOperator<Step> change) {
        return withWork(problem, problem.steps().stream().map(change).toList(), problem.waits(), problem.coldLimits(),
                problem.lifeLimits());
    }

    static Problem withWork(Problem problem, List<Step> steps, List<Wait> waits, List<ColdLimit> cold, List<LifeLimit> lives) {
        return new Problem(problem.title(), problem.clock(), problem.kitchen(), problem.orders(), problem.batches(), steps,
                waits, cold, lives, problem.freshnessWishes(), problem.fixedSteps(), problem.weights(), problem.kept());
    }
}
