package crumbclock.engine.model;

import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    private static List<List<String>> units(ProblemBuilder problem, boolean mirrored) {
        return Arrays.stream(CompiledProblem.of(problem.build(), mirrored).units.fine)
                .map(unit -> Arrays.stream(unit.members()).map(task -> task.step.id()).toList()).toList();
    }

    private static ProblemBuilder two(int least, int most) {
        return aProblem().step(handsOn("c/a", 5)).step(handsOn("c/b", 5)).wait("c/a", "c/b", least, most);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 60, -10})
    void should_tie_two_steps_when_the_wait_between_them_has_a_short_range(int least) {
        for (boolean mirrored : new boolean[] {false, true}) {
            assertThat(units(two(least, least), mirrored)).hasSize(1);
            assertThat(units(two(least, least + Units.TIE_RANGE), mirrored)).hasSize(1);
            assertThat(units(two(least, least + Units.TIE_RANGE + 1), mirrored)).hasSize(2);
        }
    }

    @Test
    void should_not_tie_by_a_wait_without_a_most() {
        assertThat(units(two(0, Wait.NO_MOST), false)).containsExactly(List.of("c/a"), List.of("c/b"));
    }

    @Test
    void should_add_the_stretch_of_a_stay_to_the_range_of_the_wait_behind_it() {
        // given a stay of 10 minutes or more, and a wait of 0 to 50 behind it
        assertThat(units(stay(10 + Units.TIE_RANGE - 50), false)).hasSize(1);
        assertThat(units(stay(10 + Units.TIE_RANGE - 50 + 1), false)).hasSize(2);
    }

    private static ProblemBuilder stay(int most) {
        return aProblem().step(resting("c/chill", 10, most)).step(handsOn("c/pipe", 5)).wait("c/chill", "c/pipe", 0, 50);
    }

    @Test
    void should_order_members_so_that_each_comes_after_those_it_waits_for() {
        // given three steps named the wrong way round
        ProblemBuilder chain = aProblem().step(handsOn("c/last", 5)).step(handsOn("c/middle", 5)).step(handsOn("c/first", 5))
                .wait("c/first", "c/middle", 0, 10).wait("c/middle", "c/last", 0, 10);

        // then
        assertThat(units(chain, false)).containsExactly(List.of("c/first", "c/middle", "c/last"));
        assertThat(units(chain, true)).containsExactly(List.of("c/last", "c/middle", "c/first"));
    }

    @Test
    void should_make_one_unit_of_units_that_would_wait_for_each_other() {
        // given a and c tied, and b between them with all the time there is
        ProblemBuilder circle = aProblem().step(handsOn("c/a", 5)).step(handsOn("c/b", 5)).step(handsOn("c/c", 5))
                .step(handsOn("c/d", 5)).wait("c/a", "c/c", 0, Units.TIE_RANGE).wait("c/a", "c/b", 0, Wait.NO_MOST)
                .wait("c/b", "c/c", 0, Wait.NO_MOST).wait("c/c", "c/d", 0, Wait.NO_MOST);

        // then
        assertThat(units(circle, false)).containsExactly(List.of("c/a", "c/b", "c/c"), List.of("c/d"));
    }

    @Test
    void should_name_the_units_that_must_come_first() {
        // given
        Units units = CompiledProblem.of(aProblem().step(handsOn("c/a", 5)).step(handsOn("c/b", 5)).step(handsOn("c/c", 5))
                .wait("c/a", "c/c", 0, Wait.NO_MOST).wait("c/b", "c/c", 0, Wait.NO_MOST).build(), false).units;

        // then
        assertThat(units.fine[2].before()).containsExactly(0, 1);
        assertThat(units.fine[0].before()).isEmpty();
    }

    @Test
    void should_refuse_waits_that_go_round_in_a_circle() {
        // given
        ProblemBuilder circle = two(0, Wait.NO_MOST).wait("c/b", "c/a", 0, Wait.NO_MOST);

        // then
        assertThatIllegalArgumentException().isThrownBy(() -> units(circle, false)).withMessageContaining("circle");
    }
}
