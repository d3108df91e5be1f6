package crumbclock.report.view;

import static crumbclock.report.ReportFixture.fri;
import static crumbclock.report.ReportFixture.sat;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Wait;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeWindowTest {

    private static final Problem PROBLEM = ReportFixture.problem();

    private static PlanView view(List<Wait> waits) {
        return new PlanView(new Problem(PROBLEM.title(), PROBLEM.clock(), PROBLEM.kitchen(), PROBLEM.orders(),
                PROBLEM.batches(), PROBLEM.steps(), waits, List.of(), List.of(), List.of(), List.of(),
                PROBLEM.weights()), ReportPlans.sound());
    }

    /** Chill: put in 19:40 for 1 min, rest 20 to 40 min, taken out 20:07 to 20:08; the coat begins at 20:08. */
    @ParameterizedTest
    @CsvSource({"7, 1", "6, 1", "5, 2", "1, 6", "0, 7"})
    void opens_later_when_the_next_step_would_come_too_late(int mostWait, int minuteAfterEight) {
        var window = TimeWindow.takeOut(view(List.of(new Wait("A1/1/chill", "A1/1/coat", 0, mostWait))), "A1/1/chill");

        assertThat(window).contains(new TimeWindow(fri(20, minuteAfterEight), fri(20, 21)));
    }

    @Test
    void a_rest_alone_gives_its_least_and_most_after_the_putting_in() {
        assertThat(TimeWindow.takeOut(view(List.of()), "A1/1/bake"))
                .contains(new TimeWindow(fri(17, 57), fri(17, 59)));
    }

    @Test
    void a_rest_without_most_has_no_end() {
        var window = TimeWindow.takeOut(view(List.of()), "A1/1/hold").orElseThrow();

        assertThat(window.hasEnd()).isFalse();
        assertThat(window.text(new ClockText(PROBLEM.clock()), sat(8, 0))).isEqualTo("from Fri 21:25 on");
    }

    @Test
    void a_step_may_begin_between_least_and_most_wait() {
        var view = view(List.of(new Wait("A2/1/set", "A2/1/cover", 30, 90)));

        assertThat(TimeWindow.begin(view, "A2/1/cover")).contains(new TimeWindow(sat(9, 10), sat(10, 10)));
    }

    @Test
    void several_waits_narrow_the_window() {
        var view = view(List.of(new Wait("A1/1/chill", "A1/1/coat", 0, 10), new Wait("B1/keep", "A1/1/coat", 2, 60)));

        assertThat(TimeWindow.begin(view, "A1/1/coat")).contains(new TimeWindow(fri(20, 10), fri(20, 18)));
    }

    @Test
    void what_cools_without_a_touch_ends_when_the_step_begins() {
        // cool from 17:59, 60 to 240 min, then no wait at all
        assertThat(TimeWindow.begin(view(List.of(new Wait("A1/1/cool", "A1/1/fill", 0, 0))), "A1/1/fill"))
                .contains(new TimeWindow(fri(18, 59), fri(21, 59)));
    }

    @Test
    void there_is_no_window_for_what_is_not_planned() {
        var view = view(List.of(new Wait("A3/1/box", "A1/1/mix", 0, 10)));

        assertThat(TimeWindow.begin(view, "A1/1/mix")).isEmpty();
        assertThat(TimeWindow.takeOut(view, "A3/1/box")).isEmpty();
        assertThat(TimeWindow.takeOut(view, "A1/1/mix")).isEmpty();
    }

    @Test
    void says_one_minute_and_two_days_in_words() {
        var clock = new ClockText(PROBLEM.clock());

        assertThat(new TimeWindow(fri(17, 0), fri(17, 0)).text(clock, fri(17, 0))).isEqualTo("at 17:00");
        assertThat(new TimeWindow(fri(23, 0), sat(1, 0)).text(clock, fri(20, 0)))
                .isEqualTo("between 23:00 and Sat 01:00");
    }
}
