package crumbclock.app.pace;

import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.PaceWord;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is made of the minutes that count. */
class LearnPacesTest extends CoatedCakes {

    @ParameterizedTest
    @CsvSource({"0.5, 1", "0.8, 2", "1.0, 3", "1.3, 4", "1.75, 5", "2.6, 6"})
    void should_find_the_factor_that_the_minutes_were_drawn_with(double factor, long seed) {
        // given: seven steps of 5 to 60 minutes
        var random = new Random(seed);
        ProblemBuilder problem = aProblem().person(ana);
        var plan = aTimetable();
        double rounding = 0;
        int minute = 0;
        for (int i = 1; i <= CAKES; i++) {
            int plain = 5 + random.nextInt(56);
            int real = (int) Math.round(plain * factor);
            problem.step(handsOn(cake(i), plain).kind("coating"));
            plan.work(cake(i), minute, minute + plain, "ana");
            line(minute, cake(i), DayWord.STARTED);
            line(minute + real, cake(i), DayWord.DONE);
            rounding = Math.max(rounding, 0.5 / plain);
            minute += 200;
        }

        // when
        var row = learned(problem.build(), plan.build()).paces().get(0);

        // then
        assertThat(row.seen().orElseThrow().seen()).isEqualTo(CAKES);
        assertThat(row.rounded()).as("seed %d", seed).isCloseTo(factor, within(rounding + 0.005));
    }

    @Test
    void should_hardly_move_for_one_absurd_record() {
        int[] minutes = {25, 26, 24, 25, 26, 24};
        for (int i = 1; i <= minutes.length; i++) {
            took(i, minutes[i - 1]);
        }
        double without = coating().rounded();

        took(CAKES, 480);

        assertThat(coating().seen().orElseThrow().seen()).isEqualTo(CAKES);
        assertThat(coating().rounded()).isCloseTo(without, within(0.01)).isCloseTo(1.25, within(0.01));
    }

    @Test
    void should_not_care_for_the_order_of_lines_and_days() {
        for (int i = 1; i <= CAKES; i++) {
            took(i, 20 + i);
        }
        line(at(3) + 40, cake(3), DayWord.SPOILED);
        line(at(3) + 50, cake(3), DayWord.STARTED);
        line(at(4) - 1, cake(3), DayWord.DONE);
        kitchen.add(new KitchenEvent(99, KitchenEvent.Kind.POWER_CUT, "", new Span(at(5), at(5) + 1)));
        PaceReport expected = learned();

        for (long seed = 1; seed <= 20; seed++) {
            Collections.shuffle(steps, new Random(seed));
            assertThat(learned()).as("seed %d", seed).isEqualTo(expected);
        }
        var one = new FinishedDay(problem(), plan().build(), new DayLog(steps, kitchen, List.of()));
        var other = new FinishedDay(problem(), plan().build(), new DayLog(steps.subList(0, 6), List.of(), List.of()));
        assertThat(LearnPaces.learn(problem().kitchen(), List.of(one, other))).isEqualTo(LearnPaces.learn(problem().kitchen(), List.of(other, one)));
    }

    @Test
    void should_say_nothing_of_a_few_steps() {
        took(1, 40);
        took(2, 40);
        assertThat(coating().word()).isEqualTo(PaceWord.TOO_FEW);
        assertThat(coating().learned()).isEmpty();

        took(3, 40);
        assertThat(coating().word()).isEqualTo(PaceWord.SLOWER);
        assertThat(coating().learned()).contains(2.0);
    }

    @ParameterizedTest
    @CsvSource({"20, 20, 20, AS_IN_USE", "20, 21, 20, AS_IN_USE", "21, 21, 21, SLOWER", "19, 19, 19, FASTER", "16, 16, 30, FASTER"})
    void should_leave_a_pace_that_differs_by_less_than_a_minute_in_twenty(int one, int two, int three, PaceWord word) {
        took(1, one);
        took(2, two);
        took(3, three);

        assertThat(coating().word()).isEqualTo(word);
    }

    @Test
    void should_never_propose_what_a_kitchen_file_does_not_take() {
        for (int i = 1; i <= 3; i++) {
            took(i, 1);
        }
        // 1 of 20 minutes is 0.05, below 0.1
        assertThat(coating().word()).isEqualTo(PaceWord.OUT_OF_RANGE);
        assertThat(learned().learned()).isEmpty();
    }

    @Test
    void should_set_it_beside_the_pace_in_use() {
        ana.paceFor("coating", 1.5).paceFor("piping", 0.9);
        for (int i = 1; i <= 3; i++) {
            took(i, 30);
        }

        assertThat(coating().inUse()).isEqualTo(1.5);
        assertThat(coating().word()).isEqualTo(PaceWord.AS_IN_USE);
        assertThat(learned().paces()).extracting(PaceRow::workKind, PaceRow::word)
                .containsExactly(tuple("coating", PaceWord.AS_IN_USE),
                        tuple("piping", PaceWord.NONE_SEEN));
    }
}
