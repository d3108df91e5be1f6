package crumbclock.outside;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.StepBuilder;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bakes of no minutes or hardly any, at several temperatures in one oven: engine and audit agree on its heat to the point. */
class OvenMomentsTest {

    private static final int[] CELSIUS = {150, 160, 180};

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    private static Problem kitchen(long seed) {
        Dice dice = new Dice(seed);
        ProblemBuilder problem = aProblem().horizon(400).person(aPerson("ada").onShift(0, 400))
                .oven(anOven("deck").rack(600, 300, 200).preheatedIn(dice.onceIn(3) ? 0 : 15));
        for (int cake = 0; cake < 4 + dice.upTo(2); cake++) {
            String id = "C" + cake;
            int bakes = dice.onceIn(2) ? 0 : dice.upTo(3);
            StepBuilder bake = resting(id + "/bake", bakes, bakes + dice.upTo(2)).bakesAt(CELSIUS[dice.upTo(2)]).roundPan(200, 80);
            problem.step(handsOn(id + "/mix", 1 + dice.upTo(3))).step(dice.onceIn(2) ? bake.putIn(1).takeOut(1) : bake)
                    .step(handsOn(id + "/coat", 1)).wait(id + "/mix", id + "/bake", 0, dice.onceIn(2) ? 0 : 30)
                    .wait(id + "/bake", id + "/coat", 0, 20).order(anOrder("o" + id).cake(id, id + "/coat").setAsideBy(20 + dice.upTo(100)));
        }
        return problem.build();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_agree_on_the_heat_of_moments(long seed) {
        Searched.of(kitchen(seed), seed, 150).assertSound();
    }

    /** Else the kitchens above would look at nothing of the kind. */
    @Test
    void should_have_made_runs_without_a_minute() {
        assertThat(seeds().filter(seed -> Searched.of(kitchen(seed), seed, 20).result().timetable().ovenRuns().stream()
                .anyMatch(run -> run.readyAt() == run.until())).count()).isGreaterThan(10);
    }
}
