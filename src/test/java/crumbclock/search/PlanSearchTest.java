package crumbclock.search;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.fixture.Dice;
import crumbclock.fixture.Made;
import crumbclock.fixture.Pinned;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.RandomKitchens;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole searches, short ones, on random kitchens. */
class PlanSearchTest {

    private static final long FEW_STEPS = 60;

    /** Notes every best cost that it hears of. */
    private static final class Notes implements SearchListener {
        private final List<Cost> costs = Collections.synchronizedList(new ArrayList<>());
        private final boolean stops;

        Notes(boolean stops) {
            this.stops = stops;
        }

        @Override
        public void improved(long schedules, Cost best) {
            costs.add(best);
        }

        @Override
        public boolean stopAsked() {
            return stops;
        }
    }

    static LongStream seeds() {
        return LongStream.range(1000, 1060);
    }

    static LongStream fewSeeds() {
        return LongStream.range(1000, 1020);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_find_sound_timetables_and_the_same_again(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        Notes notes = new Notes(false);

        // when
        SearchResult result = PlanSearch.search(problem, SearchLimits.ofSteps(seed, FEW_STEPS), notes);
        SearchResult again = PlanSearch.search(problem, SearchLimits.ofSteps(seed, FEW_STEPS), SearchListener.SILENT);

        // then
        new Made("seed " + seed, problem, result.timetable(), result.cost()).isSoundAndCostsTheSame();
        assertThat(again.timetable()).as("seed " + seed + ", searched again").isEqualTo(result.timetable());
        assertThat(notes.costs).as("seed " + seed + ": costs told").isSortedAccordingTo(Comparator.reverseOrder())
                .last().isEqualTo(result.cost());
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void should_answer_soundly_when_told_to_stop_at_once(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);

        // when
        SearchResult result = PlanSearch.search(problem, SearchLimits.ofSteps(seed, 1_000_000), new Notes(true));

        // then
        new Made("seed " + seed + ", stopped", problem, result.timetable(), result.cost()).isSoundAndCostsTheSame();
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void should_search_on_from_the_middle_of_a_plan(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        SearchLimits limits = SearchLimits.ofSteps(seed, FEW_STEPS);
        var before = PlanSearch.search(problem, limits, SearchListener.SILENT).timetable();
        int now = new Dice(seed).upTo(problem.clock().horizonMinutes());
        Set<String> begun = before.steps().stream().filter(step -> step.start() < now).map(PlacedStep::stepId)
                .collect(Collectors.toCollection(TreeSet::new));
        Problem later = Pinned.steps(problem, before, begun);

        // when
        SearchResult result = PlanSearch.search(later, limits, SearchListener.SILENT);

        // then
        new Made("seed " + seed + " from minute " + now, later, result.timetable(), result.cost()).isSoundAndCostsTheSame();
    }

    @Test
    void should_answer_with_an_empty_timetable_when_nothing_is_ordered() {
        // given
        Problem problem = ProblemBuilder.aProblem().build();

        // when
        SearchResult result = PlanSearch.search(problem, SearchLimits.ofSteps(1, FEW_STEPS), SearchListener.SILENT);

        // then
        assertThat(result.timetable().steps()).isEmpty();
        assertThat(result.cost()).isEqualTo(new Cost(0, 0));
    }
}
