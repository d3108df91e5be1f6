package crumbclock.app.replan;

import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Racks that hold one cake of 200 mm each; what stands on one already is a fact. */
class SurfacesTest {

    private static final int ONE_CAKE = 200 * 200;

    private static ProblemBuilder cakes() {
        return aProblem().step(resting("A/cool", 60, 600).stands(round(200), PlaceKind.RACK))
                .step(resting("B/cool", 60, 600).stands(round(200), PlaceKind.RACK)).step(resting("C/cool", 60, 600).stands(round(200), PlaceKind.RACK));
    }

    private static List<String> dealt(Problem problem, int from) {
        var steps = aTimetable().step("A/cool", 0, 200).onSurface("two").step("B/cool", from, 300).onSurface("two").step("C/cool", 250, 400)
                .onSurface("one").build().steps();
        return Surfaces.dealt(steps, problem, Set.of("A/cool")).stream().map(PlacedStep::surfaceId).toList();
    }

    /** B comes while A is still there, or just as it goes; C has to make room for B on the other rack. */
    @ParameterizedTest
    @CsvSource({"199, one, two", "200, two, one"})
    void should_put_what_comes_later_elsewhere(int from, String ofB, String ofC) {
        var problem = cakes().surface("one", PlaceKind.RACK, ONE_CAKE).surface("two", PlaceKind.RACK, ONE_CAKE).build();

        assertThat(dealt(problem, from)).containsExactly("two", ofB, ofC);
    }

    @Test
    void should_move_nothing_where_there_is_room() {
        var problem = cakes().surface("one", PlaceKind.RACK, ONE_CAKE).surface("two", PlaceKind.RACK, 2 * ONE_CAKE).build();

        assertThat(dealt(problem, 100)).containsExactly("two", "two", "one");
    }

    @Test
    void should_use_neither_a_bench_nor_a_rack_that_is_away() {
        var bench = cakes().surface("one", PlaceKind.BENCH, ONE_CAKE).surface("two", PlaceKind.RACK, ONE_CAKE).build();
        var away = cakes().surface("one", PlaceKind.RACK, ONE_CAKE, new Span(150, 160)).surface("two", PlaceKind.RACK, ONE_CAKE).build();

        // nothing else is left, and the audit will say so
        assertThat(dealt(bench, 100)).containsExactly("two", "two", "one");
        assertThat(dealt(away, 100)).containsExactly("two", "two", "one");
        assertThat(dealt(away, 170)).containsExactly("two", "one", "two");
    }
}
