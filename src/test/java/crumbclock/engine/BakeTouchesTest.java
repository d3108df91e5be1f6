package crumbclock.engine;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.Made;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BakeTouchesTest {

    /**
     * Two touches of two minutes do not fit into a day of three: one minute at least has to be on the other side of
     * midnight, minute 1440. Four minutes a day leave the choice.
     */
    @ParameterizedTest
    @CsvSource({"3, false, 1377", "3, true, 1439", "4, false, 20", "4, true, 2816"})
    void should_count_both_touches_of_a_bake_towards_the_day(int mostADay, boolean mirrored, int expectedStart) {
        // given
        Problem problem = aProblem().person(aPerson("ann").onShift(0, 2880).atMostADay(mostADay))
                .oven(anOven("oven").rack(500, 400, 150))
                .step(resting("o/c/bake", 60, 60).putIn(2).takeOut(2).bakesAt(180).pan(200, 200, 60))
                .order(anOrder("o").cake("o/c", "o/c/bake").setAsideBy(2880)).build();
        Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));

        // when
        decoder.decode(new int[] {0});
        Made made = new Made("most " + mostADay, problem, new TimetableBuilder(decoder).build(), new CostMeter(decoder).measure());

        // then
        made.isSoundAndCostsTheSame();
        assertThat(made.timetable().steps()).extracting(PlacedStep::start).containsExactly(expectedStart);
    }
}
