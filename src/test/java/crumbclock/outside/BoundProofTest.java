package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import org.junit.jupiter.api.Test;

/** The bound against optima that Choco, a general-purpose constraint library, proves from a model of its own. */
class BoundProofTest {

    private static final int KITCHENS = 60;
    /** Decisions that a proof may take before it counts as failed. */
    private static final long NODES = 1_000_000;

    /** Measured: 53 of the first 60 kitchens. */
    @Test
    void should_never_be_above_the_least_lateness_and_mostly_reach_it() {
        int reached = 0;
        for (long seed = 1; seed <= KITCHENS; seed++) {
            var problem = TinyKitchens.of(seed);

            LowerBound bound = Bound.of(problem);

            long least = ChocoKitchen.leastCost(problem, NODES).medium();
            assertThat(bound.medium()).as("lateness of kitchen %d", seed).isLessThanOrEqualTo(least);
            assertThat(bound.allPossible()).as("kitchen %d can be done", seed).isTrue();
            reached += bound.medium() == least ? 1 : 0;
        }
        assertThat(reached).as("kitchens whose least lateness is the bound").isGreaterThanOrEqualTo(53);
    }

    /** Measured: 33 of the first 60 kitchens. */
    @Test
    void should_never_be_above_the_earliest_end_and_often_reach_it() {
        int reached = 0;
        for (long seed = 1; seed <= KITCHENS; seed++) {
            var problem = TinyKitchens.of(seed);

            int bound = Bound.of(problem).endMinute();

            int least = ChocoKitchen.leastEnd(problem, NODES);
            assertThat(bound).as("end of kitchen %d", seed).isLessThanOrEqualTo(least);
            reached += bound == least ? 1 : 0;
        }
        assertThat(reached).as("kitchens whose earliest end is the bound").isGreaterThanOrEqualTo(33);
    }
}
