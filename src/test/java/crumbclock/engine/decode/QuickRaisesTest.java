package crumbclock.engine.decode;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class QuickRaisesTest {

    /** Two evenings of four hours; the ganache may wait two hours before it sets, and a day when it has. */
    private final Problem problem = aProblem().horizon(1700).person(aPerson("ana").onShift(0, 240).onShift(1440, 1680))
            .order(anOrder("A").cake("A1", "A1/coat").setAsideBy(1690))
            .order(anOrder("B").cake("B1", "B1/box").setAsideBy(1690))
            .step(handsOn("A1/make-ganache", 30)).step(resting("A1/set-ganache", 60, 300)).step(handsOn("A1/coat", 30).finish())
            .step(handsOn("B1/box", 200).finish())
            .wait("A1/make-ganache", "A1/set-ganache", 0, 120).wait("A1/set-ganache", "A1/coat", 0, 1500).build();

    /** The second evening is full with coat and box: set as late as it can be, the ganache would have been made by nobody. */
    @Test
    void should_see_that_a_rest_must_begin_an_evening_earlier() {
        // given
        CompiledProblem compiled = CompiledProblem.of(problem, true);
        Decoder decoder = new Decoder(compiled);
        int[] ways = new int[compiled.orders.length];
        Arrays.fill(ways, Decoder.SPLIT);

        // when
        decoder.decodeOnce(order(compiled, "B1/box", "A1/coat", "A1/set-ganache", "A1/make-ganache"), ways, new int[compiled.tasks.length]);

        // then
        assertThat(decoder.stuckUnits()).isZero();
        assertThat(decoder.brokenMinutes()).isZero();
        assertThat(new TimetableBuilder(decoder).build().steps()).filteredOn(step -> step.stepId().equals("A1/make-ganache"))
                .singleElement().satisfies(step -> assertThat(step.end()).isEqualTo(240));
    }

    private static int[] order(CompiledProblem compiled, String... ids) {
        int[] order = Arrays.stream(ids).mapToInt(id -> Arrays.stream(compiled.tasks).filter(task -> task.step.id().equals(id))
                .mapToInt((Task task) -> compiled.units.unitOf[task.index]).findFirst().orElseThrow()).distinct().toArray();
        assertThat(order).hasSize(compiled.units.fine.length);
        return order;
    }

    @Test
    void should_go_back_no_more_than_a_few_times() {
        QuickRaises raises = new QuickRaises();

        assertThat(IntStream.range(0, 3).allMatch(raise -> raises.add(10 + raise, raise, 100, 5))).isTrue();
        assertThat(raises.isUsedUp()).isFalse();
        assertThat(raises.add(20, 9, 100, 5)).isFalse();
        assertThat(raises.isUsedUp()).isTrue();
    }

    @Test
    void should_forget_what_was_found_out_at_a_change_or_after_it_and_what_came_of_that() {
        // given: the second was found out earlier in the order of work than the first, but only because of it
        QuickRaises raises = new QuickRaises();
        raises.add(10, 1, 100, 4);
        raises.add(30, 2, 200, 8);
        raises.add(12, 3, 300, 6);

        // when the order of work changes at turn 20
        int turn = raises.forgetFrom(20);

        // then
        int[] bounds = new int[4];
        raises.applyTo(bounds);
        assertThat(bounds).containsExactly(0, 100, 0, 0);
        assertThat(turn).isEqualTo(6);
    }

    @Test
    void should_keep_all_when_nothing_changes_so_early() {
        QuickRaises raises = new QuickRaises();
        raises.add(10, 1, 100, 4);

        assertThat(raises.forgetFrom(11)).isEqualTo(11);
        int[] bounds = new int[2];
        raises.applyTo(bounds);
        assertThat(bounds).containsExactly(0, 100);
    }
}
