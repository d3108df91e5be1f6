package crumbclock.engine.model;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.fixture.RandomKitchens;
import crumbclock.units.Span;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The backward direction is the forward one in a mirror: mirrored once more it is the forward one again. */
class CompiledProblemTest {

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_give_the_forward_problem_when_mirrored_twice(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        CompiledProblem forward = CompiledProblem.of(problem, false);
        CompiledProblem backward = CompiledProblem.of(problem, true);

        // then
        for (int index = 0; index < forward.tasks.length; index++) {
            Task ahead = forward.tasks[index];
            Task back = backward.tasks[index];
            String at = "seed " + seed + ", " + ahead;
            assertThat(back.step).as(at).isSameAs(ahead.step);
            assertThat(back.inMinutes).as(at).isEqualTo(ahead.outMinutes);
            assertThat(back.outMinutes).as(at).isEqualTo(ahead.inMinutes);
            assertThat(back.inPeople).as(at).isEqualTo(ahead.outPeople);
            assertThat(back.outPeople).as(at).isEqualTo(ahead.inPeople);
            assertThat(turned(back.before, true)).as(at + ": waits behind").isEqualTo(turned(ahead.after, false));
            assertThat(turned(back.after, true)).as(at + ": waits before").isEqualTo(turned(ahead.before, false));
        }
        for (int index = 0; index < forward.needs.length; index++) {
            assertThat(backward.needs[index].first().index).isEqualTo(forward.needs[index].last().index);
            assertThat(backward.needs[index].last().index).isEqualTo(forward.needs[index].first().index);
            assertThat(backward.needs[index].owner().index).isEqualTo(forward.needs[index].owner().index);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_mirror_calendars_minute_by_minute(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        CompiledProblem forward = CompiledProblem.of(problem, false);
        CompiledProblem backward = CompiledProblem.of(problem, true);
        List<Span> shifts = problem.kitchen().people().get(0).shifts();

        // when
        long[] ahead = forward.calendar(shifts);
        long[] back = backward.calendar(shifts);

        // then
        for (int minute = 0; minute < forward.horizon; minute++) {
            int real = minute;
            assertThat(Bits.get(ahead, minute)).as("minute %d", minute)
                    .isEqualTo(shifts.stream().anyMatch(shift -> shift.contains(real)))
                    .isEqualTo(Bits.get(back, forward.horizon - 1 - minute));
            assertThat(forward.dayOf[minute]).isEqualTo(backward.dayOf[forward.horizon - 1 - minute]);
        }
    }

    @Test
    void should_mirror_spans_at_the_horizon_and_back() {
        // given
        CompiledProblem backward = CompiledProblem.of(RandomKitchens.of(1), true);
        Span real = new Span(100, 160);

        // when
        Span abstractSpan = backward.mirror(real);

        // then
        assertThat(abstractSpan).isEqualTo(new Span(backward.horizon - 160, backward.horizon - 100));
        assertThat(backward.mirror(abstractSpan)).isEqualTo(real);
        assertThat(backward.realStart(abstractSpan.start(), abstractSpan.end())).isEqualTo(100);
        assertThat(backward.realEnd(abstractSpan.start(), abstractSpan.end())).isEqualTo(160);
    }

    /** Waits as "other task: least to most"; turned round for the backward direction. */
    private static List<String> turned(Link[] links, boolean mirrored) {
        return Arrays.stream(links)
                .map(link -> (mirrored ? link.to() + " > " + link.from() : link.from() + " > " + link.to()) + ": " + link.least()
                        + " to " + link.most())
                .sorted().toList();
    }

}
