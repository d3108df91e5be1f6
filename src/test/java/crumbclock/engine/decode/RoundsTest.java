package crumbclock.engine.decode;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Timetable;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.fixture.RandomKitchens;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A decode that goes on from the last one against one that starts from nothing, on random kitchens. */
class RoundsTest {

    private static final int DECODES = 25;

    static LongStream seeds() {
        return LongStream.range(0, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_make_the_same_timetable_as_from_nothing(long seed) {
        for (boolean mirrored : new boolean[] {false, true}) {
            // given
            CompiledProblem compiled = CompiledProblem.of(RandomKitchens.of(seed), mirrored);
            Random random = new Random(seed);
            Decoder goesOn = new Decoder(compiled);
            int[] sequence = shuffled(compiled.units.fine.length, random);
            goesOn.decode(sequence);
            int[] ways = goesOn.ways();
            int[] bounds = goesOn.bounds();
            for (int decode = 0; decode < DECODES; decode++) {
                // when
                change(sequence, ways, bounds, compiled.horizon, random);
                goesOn.decodeOnce(sequence, ways, bounds);

                // then
                Decoder fresh = new Decoder(compiled);
                fresh.decodeOnce(sequence, ways, bounds);
                assertThat(seen(goesOn)).as("seed %d, mirrored %s, decode %d", seed, mirrored, decode).isEqualTo(seen(fresh));
            }
        }
    }

    /** What mending found out, given to a decoder that knows nothing else, makes the very timetable that was mended. */
    @ParameterizedTest
    @MethodSource("seeds")
    void should_mend_to_what_its_ways_and_bounds_make_from_nothing(long seed) {
        for (boolean mirrored : new boolean[] {false, true}) {
            // given
            CompiledProblem compiled = CompiledProblem.of(RandomKitchens.of(seed), mirrored);
            int[] sequence = shuffled(compiled.units.fine.length, new Random(seed));
            Decoder mended = new Decoder(compiled);
            Decoder fresh = new Decoder(compiled);

            // when
            mended.decode(sequence);
            fresh.decodeOnce(sequence, mended.ways(), mended.bounds());

            // then
            assertThat(seen(mended)).as("seed %d, mirrored %s", seed, mirrored).isEqualTo(seen(fresh));
        }
    }

    /** Mostly one unit goes elsewhere; now and then a way or a bound becomes another, or nothing changes. */
    private static void change(int[] sequence, int[] ways, int[] bounds, int horizon, Random random) {
        int kind = random.nextInt(10);
        if (kind < 6) {
            List<Integer> units = Arrays.stream(sequence).boxed().collect(Collectors.toList());
            units.add(random.nextInt(sequence.length), units.remove(random.nextInt(sequence.length)));
            Arrays.setAll(sequence, units::get);
        } else if (kind < 8) {
            ways[random.nextInt(ways.length)] = random.nextInt(Decoder.LEFT_OUT + 1);
        } else if (kind == 8) {
            bounds[random.nextInt(bounds.length)] = random.nextInt(3) == 0 ? 0 : random.nextInt(horizon / 2);
        }
    }

    private static int[] shuffled(int units, Random random) {
        List<Integer> order = IntStream.range(0, units).boxed().collect(Collectors.toList());
        Collections.shuffle(order, random);
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Everything about a decode that anybody reads. */
    private record Seen(Timetable timetable, long brokenMinutes, int stuckUnits, List<Boolean> possible, List<Boolean> stuck, Object cost) {
    }

    private static Seen seen(Decoder decoder) {
        List<Boolean> possible = IntStream.range(0, decoder.compiled().orders.length).mapToObj(decoder::isPossible).toList();
        List<Boolean> stuck = IntStream.range(0, decoder.compiled().orders.length).mapToObj(decoder::isStuck).toList();
        boolean whole = decoder.stuckUnits() == 0;
        return new Seen(whole ? new TimetableBuilder(decoder).build() : null, decoder.brokenMinutes(), decoder.stuckUnits(), possible, stuck,
                new CostMeter(decoder).measure());
    }
}
