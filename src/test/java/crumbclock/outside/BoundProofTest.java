package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import crumbclock.engine.cost.Cost;
import org.junit.jupiter.api.Test;

/** The bound against optima that Choco, a general-purpose constraint library, proves from a model of its own. */
class BoundProofTest {

    private static final int KITCHENS = 60;
    /** Decisions that a proof may take before it counts as failed. */
    private static final long NODES = 1_000_000;

    /** Measured: 51 of the first 60 kitchens. */
    @Test
    void should_never_be_above_the_least_lateness_and_mostly_reach_it() {
        int reached = 0;
        for (long seed = 1; seed <= KITCHENS; seed++) {
            var problem = TinyKitchens.of(seed);

            LowerBound bound = Bound.of(problem);

            Cost least = ChocoKitchen.leastCost(problem, NODES);
            assertThat(bound.medium()).as("lateness of kitchen %d", seed).isLessThanOrEqualTo(least.medium());
            assertThat((long) bound.endMinute()).as("end of kitchen %d", seed).isLessThanOrEqualTo(least.soft());
            assertThat(bound.allPossible()).as("kitchen %d can be done", seed).isTrue();
            reached += bound.medium() == least.medium() ? 1 : 0;
        }
        assertThat(reached).as("kitchens whose least lateness is the bound").isGreaterThanOrEqualTo(51);
    }
}
