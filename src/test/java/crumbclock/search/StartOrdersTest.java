package crumbclock.search;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.KeptStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.ProblemBuilder;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartOrdersTest {

    private static ProblemBuilder twoCakes() {
        return aProblem().person(aPerson("ana").onShift(0, 600)).order(anOrder("A").cake("A1", "A1/coat").setAsideBy(600))
                .order(anOrder("B").cake("B1", "B1/coat").setAsideBy(500)).step(handsOn("A1/coat", 30).finish()).step(handsOn("B1/coat", 30).finish());
    }

    private static List<String> first(Problem problem, boolean mirrored) {
        CompiledProblem compiled = CompiledProblem.of(problem, mirrored);
        return Arrays.stream(StartOrders.of(compiled).get(0)).mapToObj(unit -> compiled.units.fine[unit].members()[0].step.id()).toList();
    }

    @Test
    void should_begin_with_what_is_due_first_when_nobody_has_a_plan() {
        assertThat(first(twoCakes().build(), false)).containsExactly("B1/coat", "A1/coat");
    }

    @Test
    void should_begin_with_the_order_that_people_know_in_both_directions() {
        Problem known = twoCakes().kept(0, new KeptStep("A1/coat", 100, List.of("ana"), "", ""), new KeptStep("B1/coat", 200, List.of("ana"), "", ""))
                .build();

        assertThat(first(known, false)).containsExactly("A1/coat", "B1/coat");
        assertThat(first(known, true)).containsExactly("B1/coat", "A1/coat");
    }
}
