package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.change.KitchenChange;
import crumbclock.domain.change.KitchenChange.Away;
import crumbclock.domain.change.KitchenChanges;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Changes of tiny kitchens whose least cost an exact solver proves: with more time, one more person or one more shelf the best plan is
 * never worse, and with a person away for a while never better. Whoever turns a change the wrong way round is found out.
 */
class MoreIsNeverWorseTest {

    private static final long NODES = 60_000;

    @ParameterizedTest
    @ValueSource(longs = {1, 3, 5, 6, 7, 8})
    void should_never_cost_more_with_more(long seed) {
        var problem = TinyKitchens.of(seed);
        Cost least = ChocoKitchen.leastCost(problem, NODES);

        assertThat(least(problem, longerHours(problem))).as("longer hours").isLessThanOrEqualTo(least);
        assertThat(least(problem, onePersonMore(problem))).as("one person more").isLessThanOrEqualTo(least);
        assertThat(least(problem, new KitchenChange.ShelfLike("fridge", "only", "other"))).as("one shelf more").isLessThanOrEqualTo(least);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 3, 5, 6, 7, 8})
    void should_never_cost_less_with_less(long seed) {
        var problem = TinyKitchens.of(seed);
        var person = problem.kitchen().people().get(0);
        var early = new Away(KitchenChange.Kind.PERSON, person.id(), 0, new Span(0, 20));

        assertThat(least(problem, early)).isGreaterThanOrEqualTo(ChocoKitchen.leastCost(problem, NODES));
    }

    /** Each kind of change pays somewhere: otherwise the tests above would hold for changes that do nothing. */
    @Test
    void should_pay_in_some_kitchen() {
        assertThat(least(TinyKitchens.of(3), onePersonMore(TinyKitchens.of(3)))).isLessThan(ChocoKitchen.leastCost(TinyKitchens.of(3), NODES));
        assertThat(least(TinyKitchens.of(6), new KitchenChange.ShelfLike("fridge", "only", "other")))
                .isLessThan(ChocoKitchen.leastCost(TinyKitchens.of(6), NODES));
    }

    /** What a person's absence costs, the same hours give back. */
    @ParameterizedTest
    @ValueSource(longs = {1, 5, 8})
    void should_come_back_with_the_hours(long seed) {
        var problem = TinyKitchens.of(seed);
        var person = problem.kitchen().people().get(0);
        var gone = new Span(0, 20);
        var less = with(problem, KitchenChanges.changed(problem.kitchen(), new Away(KitchenChange.Kind.PERSON, person.id(), 0, gone)));
        Cost least = ChocoKitchen.leastCost(problem, NODES);

        assertThat(ChocoKitchen.leastCost(less, NODES)).isGreaterThan(least);
        assertThat(least(less, new KitchenChange.MoreHours(person.id(), gone))).isEqualTo(least);
    }

    private static Cost least(Problem problem, KitchenChange change) {
        return ChocoKitchen.leastCost(with(problem, KitchenChanges.changed(problem.kitchen(), change)), NODES);
    }

    /** The last to come is there from the start, and so to the end of the day. */
    private static KitchenChange longerHours(Problem problem) {
        var people = problem.kitchen().people();
        return new KitchenChange.MoreHours(people.get(people.size() - 1).id(), new Span(0, problem.clock().horizonMinutes()));
    }

    private static KitchenChange onePersonMore(Problem problem) {
        var first = problem.kitchen().people().get(0);
        var other = new Person("other", "other", first.shifts(), List.of(), first.skills(), first.paceByWork(), first.mostMinutesADay());
        return new KitchenChange.Brought(new Kitchen("", List.of(other), List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    private static Problem with(Problem problem, Kitchen kitchen) {
        return new Problem(problem.title(), problem.clock(), kitchen, problem.orders(), problem.batches(), problem.steps(),
                problem.waits(), problem.coldLimits(), problem.lifeLimits(), problem.freshnessWishes(), problem.fixedSteps(),
                problem.weights());
    }
}
