package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.app.PlanProblem;
import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tiny kitchens in which the first helper turns out to be away for half an hour, before anything has begun, against Choco:
 * a new plan that costs less than what is proven for that kitchen would be a hole.
 */
class ReplanProofTest {

    private static final long NODES = 200_000;

    @ParameterizedTest
    @ValueSource(longs = {1, 5, 6, 8, 9, 12})
    void should_never_be_better_than_proven_for_the_kitchen_as_it_is_now(long seed) {
        Problem problem = TinyKitchens.of(seed);
        Plan plan = PlanProblem.plan(problem, SearchLimits.ofSteps(1, 2000), SearchListener.SILENT);
        int now = 0;
        var away = new KitchenEvent(1, KitchenEvent.Kind.PERSON_AWAY, "first", new Span(30, 60));

        Replanned made = Replan.replan(problem, plan, new DayLog(List.of(), List.of(away), List.of()), now,
                SearchLimits.ofSteps(1, 2000), SearchListener.SILENT);

        Kitchen kitchen = made.problem().kitchen();
        Cost least = ChocoKitchen.leastCost(new Problem(problem.title(), problem.clock(), kitchen, problem.orders(), problem.batches(),
                problem.steps(), problem.waits(), problem.coldLimits(), problem.lifeLimits(), problem.freshnessWishes(), List.of(),
                problem.weights()), NODES);
        assertThat(made.plan().findings()).isEmpty();
        assertThat(new Cost(made.plan().mediumCost(), made.plan().softCost())).as("kitchen %d", seed).isGreaterThanOrEqualTo(least);
    }
}
