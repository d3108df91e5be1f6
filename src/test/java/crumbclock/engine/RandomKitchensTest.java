package crumbclock.engine;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.Made;
import crumbclock.fixture.RandomKitchens;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The decoder against the audit, which shares no code with it, on random kitchens. */
class RandomKitchensTest {

    private static final int SHUFFLES = 2;
    private static final int QUICK_SHUFFLES = 1;

    static LongStream seeds() {
        return LongStream.concat(LongStream.range(0, 300), LongStream.of(1166));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_make_sound_timetables_forward(long seed) {
        decodeAndAudit(seed, false);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_make_sound_timetables_backward(long seed) {
        decodeAndAudit(seed, true);
    }

    private static void decodeAndAudit(long seed, boolean mirrored) {
        // given
        Problem problem = RandomKitchens.of(seed);
        Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));
        List<int[]> orders = orders(seed, decoder.compiled().units.fine.length, SHUFFLES);

        Made first = null;
        for (int[] order : orders) {
            // when
            decoder.decode(order);
            Made made = made(problem, decoder, name(seed, mirrored, order, "mended"));

            first = first == null ? made : first;

            // then
            made.isSoundAndCostsTheSame();
            quick(seed, problem, decoder, mirrored);
        }
        // when the first order of work comes again, after all the others
        decoder.decode(orders.get(0));

        // then
        assertThat(timetable(decoder)).as(first.how() + ", decoded again").isEqualTo(first.timetable());
    }

    /** Quick decodes, with the ways and bounds that the last mended one found out, mend nothing; those that say that they broke nothing have to be sound, too. */
    private static void quick(long seed, Problem problem, Decoder decoder, boolean mirrored) {
        int[] ways = decoder.ways();
        int[] bounds = decoder.bounds();
        for (int[] order : orders(seed + 7, decoder.compiled().units.fine.length, QUICK_SHUFFLES)) {
            decoder.decodeOnce(order, ways, bounds);
            if (decoder.brokenMinutes() == 0 && decoder.stuckUnits() == 0) {
                Made made = made(problem, decoder, name(seed, mirrored, order, "quick"));
                made.isSoundAndCostsTheSame();
            }
        }
    }

    @Test
    void should_leave_out_no_more_than_a_third_of_the_orders() {
        // given orders of which most can be made: else the tests above would look at next to nothing
        int orders = 0;
        int made = 0;
        for (long seed = 0; seed < 300; seed++) {
            Problem problem = RandomKitchens.of(seed);
            Decoder forward = natural(problem, false);
            Decoder backward = natural(problem, true);
            for (int order = 0; order < problem.orders().size(); order++) {
                orders++;
                made += forward.isPossible(order) || backward.isPossible(order) ? 1 : 0;
            }
        }

        // then
        assertThat(100 * made / orders).as("%d of %d orders made", made, orders).isGreaterThanOrEqualTo(67);
    }

    private static Decoder natural(Problem problem, boolean mirrored) {
        Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));
        decoder.decode(IntStream.range(0, decoder.compiled().units.fine.length).toArray());
        return decoder;
    }

    private static List<int[]> orders(long seed, int units, int shuffles) {
        List<int[]> orders = new ArrayList<>();
        orders.add(IntStream.range(0, units).toArray());
        Dice dice = new Dice(seed);
        for (int shuffle = 0; shuffle < shuffles; shuffle++) {
            orders.add(dice.shuffle(units));
        }
        return orders;
    }

    private static Made made(Problem problem, Decoder decoder, String how) {
        return new Made(how, problem, timetable(decoder), new CostMeter(decoder).measure());
    }

    private static Timetable timetable(Decoder decoder) {
        return new TimetableBuilder(decoder).build();
    }

    private static String name(long seed, boolean mirrored, int[] order, String how) {
        return "seed " + seed + (mirrored ? ", backward, " : ", forward, ") + how + ", order of work "
                + java.util.Arrays.toString(order);
    }
}
