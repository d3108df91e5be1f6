package crumbclock.engine;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.Made;
import crumbclock.fixture.Pinned;
import crumbclock.fixture.RandomKitchens;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is fixed stays as it was recorded (rule R15), and all else keeps clear of it. */
class FixedStepsTest {

    static LongStream seeds() {
        return LongStream.range(0, 120);
    }

    /** As on the day itself: whatever has begun by some minute is done or running. */
    @ParameterizedTest
    @MethodSource("seeds")
    void should_plan_on_from_the_middle_of_a_plan(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        Timetable before = decode(problem, seed % 2 == 1, new Dice(seed)).timetable();
        int now = new Dice(seed).upTo(problem.clock().horizonMinutes());
        Set<String> begun = before.steps().stream().filter(step -> step.start() < now).map(PlacedStep::stepId)
                .collect(Collectors.toCollection(TreeSet::new));

        planAgain(seed, Pinned.steps(problem, before, begun), "begun before " + now);
    }

    /** As when somebody asks for it: single steps are pinned, wherever they are. */
    @ParameterizedTest
    @MethodSource("seeds")
    void should_plan_around_single_pinned_steps(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        Timetable before = decode(problem, seed % 2 == 0, new Dice(seed)).timetable();
        Dice dice = new Dice(seed + 1);
        Set<String> some = before.steps().stream().map(PlacedStep::stepId).filter(step -> dice.onceIn(6))
                .collect(Collectors.toCollection(TreeSet::new));

        planAgain(seed, Pinned.steps(problem, before, some), "some pinned");
    }

    private static void planAgain(long seed, Problem pinned, String how) {
        for (boolean mirrored : new boolean[] {false, true}) {
            // when
            Made made = decode(pinned, mirrored, new Dice(seed + 2));
            Made named = new Made("seed " + seed + ", " + how + (mirrored ? ", backward" : ", forward"), made.problem(),
                    made.timetable(), made.cost());

            // then
            for (FixedStep fixed : pinned.fixedSteps()) {
                assertThat(made.timetable().steps()).as(named.how()).contains(fixed.step());
                assertThat(made.timetable().touches()).as(named.how()).containsAll(fixed.touches());
                assertThat(made.timetable().pans()).as(named.how()).containsAll(fixed.pans());
                assertThat(made.timetable().placements()).as(named.how()).containsAll(fixed.placements());
            }
            named.isSoundAndCostsTheSame();
        }
    }

    private static Made decode(Problem problem, boolean mirrored, Dice dice) {
        Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));
        decoder.decode(dice.shuffle(decoder.compiled().units.fine.length));
        return new Made("seed", problem, new TimetableBuilder(decoder).build(), new CostMeter(decoder).measure());
    }
}
