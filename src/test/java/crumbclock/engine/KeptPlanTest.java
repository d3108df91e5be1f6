package crumbclock.engine;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.Made;
import crumbclock.fixture.RandomKitchens;
import crumbclock.rules.Audit;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The distance from a plan that people have (wish W08) is the same for the engine and the audit. */
class KeptPlanTest {

    static LongStream seeds() {
        return LongStream.range(0, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_cost_as_much_as_the_audit_says(long seed) {
        // given a plan that holds from some minute on
        Problem problem = withKept(seed);
        for (boolean mirrored : new boolean[] {false, true}) {
            // when another order of work is tried
            Made made = decode("seed " + seed + (mirrored ? ", backward" : ", forward"), problem, mirrored, new Dice(seed + 1));

            // then
            made.isSoundAndCostsTheSame();
        }
    }

    @Test
    void should_cost_something_in_most_kitchens() {
        // else the test above would compare nothing with nothing
        assertThat(seeds().filter(seed -> Audit.audit(withKept(seed),
                decode("", withKept(seed), false, new Dice(seed + 1)).timetable()).cost().stream()
                .filter(line -> line.name().equals("W08")).mapToLong(CostLine::points).sum() > 0).count())
                .isGreaterThan(60);
    }

    private static Problem withKept(long seed) {
        Problem problem = RandomKitchens.of(seed);
        Timetable before = decode("", problem, seed % 2 == 0, new Dice(seed)).timetable();
        return problem.withKept(KeptPlan.of(before, new Dice(seed).upTo(problem.clock().horizonMinutes() / 2)));
    }

    private static Made decode(String how, Problem problem, boolean mirrored, Dice dice) {
        Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));
        decoder.decode(dice.shuffle(decoder.compiled().units.fine.length));
        return new Made(how, problem, new TimetableBuilder(decoder).build(), new CostMeter(decoder).measure());
    }
}
