package crumbclock.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.RandomKitchens;
import crumbclock.search.model.DecodeDesk;
import crumbclock.search.model.UnitRef;
import crumbclock.search.model.WorkPlan;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The search under the solver's own assertions: moves undo what they do, and equal plans score equally. */
@Tag("slow")
class SearchModelTest {

    private static final long STEPS = 54_000;

    @ParameterizedTest
    @CsvSource({"1000, false", "1000, true", "1001, false", "1001, true"})
    void should_not_be_corrupt_under_full_assertions(long seed, boolean mirrored) {
        // given
        CompiledProblem compiled = CompiledProblem.of(RandomKitchens.of(seed), mirrored);
        SearchLimits limits = SearchLimits.ofSteps(seed, STEPS);
        SolverConfig config = new DirectedSearch(compiled, limits, new Progress(SearchListener.SILENT, limits)).config(0)
                .withEnvironmentMode(EnvironmentMode.FULL_ASSERT);
        DecodeDesk desk = new DecodeDesk(compiled);
        int[] natural = IntStream.range(0, compiled.units.fine.length).toArray();
        desk.mend(natural);
        desk.bound(desk.decoder().bounds());
        List<UnitRef> sequence = IntStream.of(natural).mapToObj(UnitRef::new).toList();
        WorkPlan start = new WorkPlan(desk, sequence, desk.decoder().ways());

        // when
        WorkPlan best = SolverFactory.<WorkPlan>create(config).buildSolver().solve(start);

        // then
        assertThat(best.getOrder().getSequence()).as("seed %d: every unit once", seed)
                .containsExactlyInAnyOrderElementsOf(sequence);
        assertThat(best.getScore().hardScore()).as("seed %d: minutes broken", seed).isZero();
    }
}
