package crumbclock.formats.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.formats.calendar.ClockText.DayRange;
import crumbclock.units.Span;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ProblemCalendarTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static ProblemCalendar from(String start, int days) {
        return new ProblemCalendar(new ProblemClock(LocalDateTime.parse(start).atZone(LONDON), days * 1440), true);
    }

    @Test
    void should_count_elapsed_minutes_over_the_night_that_loses_an_hour() {
        // given: clocks in London go from 01:00 to 02:00 on 2026-03-29 (IANA time zone database)
        var calendar = from("2026-03-28T12:00", 2);

        // then
        assertThat(calendar.minute("2026-03-29T12:00")).hasValue(23 * 60);
        assertThat(calendar.spans(Map.of("saturday", List.of(new DayRange(18 * 60, 30 * 60))))).containsExactly(new Span(360, 360 + 11 * 60));
        assertThat(calendar.minute("2026-03-29T01:30")).as("a time that the clock jumps over").isEmpty();
        assertThat(calendar.show(12 * 60 + 59)).isEqualTo("2026-03-29T00:59");
        assertThat(calendar.show(13 * 60)).isEqualTo("2026-03-29T02:00");
    }

    @Test
    void should_count_elapsed_minutes_over_the_night_that_gains_an_hour() {
        // given: back from 02:00 to 01:00 on 2026-10-25
        var calendar = from("2026-10-24T12:00", 2);

        // then
        assertThat(calendar.minute("2026-10-25T12:00")).hasValue(25 * 60);
        assertThat(calendar.spans(Map.of("saturday", List.of(new DayRange(18 * 60, 30 * 60))))).containsExactly(new Span(360, 360 + 13 * 60));
        assertThat(calendar.minute("2026-10-25T01:30")).as("the first of two").hasValue(13 * 60 + 30);
        assertThat(calendar.minute("2026-10-25T01:30+00:00")).as("the second one").hasValue(14 * 60 + 30);
        assertThat(calendar.minute("2026-10-25T01:30+02:00")).as("an offset that does not hold there").isEmpty();
    }

    @Test
    void should_take_a_date_before_its_weekday_and_a_weekday_before_every_day() {
        // given: Thursday 2026-06-04 to Sunday
        var calendar = from("2026-06-04T00:00", 3);
        var nine = List.of(new DayRange(540, 600));
        var ten = List.of(new DayRange(600, 660));

        // when
        var spans = calendar.spans(Map.of("everyday", nine, "friday", ten, "2026-06-06", List.<DayRange>of()));

        // then
        assertThat(spans).containsExactly(new Span(540, 600), new Span(1440 + 600, 1440 + 660));
    }

    @Test
    void should_cut_to_the_problem_and_join_what_touches() {
        // given: from Friday 20:00, a shift that began on Friday 18:00 and goes on over midnight in two parts
        var calendar = from("2026-06-05T20:00", 1);

        // when
        var spans = calendar.spans(Map.of("friday", List.of(new DayRange(1080, 1440)), "saturday", List.of(new DayRange(0, 120), new DayRange(1080, 1500))));

        // then
        assertThat(spans).containsExactly(new Span(0, 360), new Span(22 * 60, 24 * 60));
    }

    @Test
    void should_find_the_next_such_weekday_from_the_start() {
        var calendar = from("2026-06-05T20:00", 2);

        assertThat(calendar.minute("Sat 10:00")).hasValue(14 * 60);
        assertThat(calendar.minute("Fri 20:00")).hasValue(0);
        assertThat(calendar.minute("Fri 19:59")).hasValue(7 * 1440 - 1);
    }

    @Test
    void should_know_what_lies_in_the_problem() {
        var calendar = from("2026-06-05T20:00", 1);

        assertThat(calendar.holds(0)).isTrue();
        assertThat(calendar.holds(1440)).isTrue();
        assertThat(calendar.holds(1441)).isFalse();
        assertThat(calendar.holds(-1)).isFalse();
        assertThat(ProblemCalendar.standIn(LONDON).holds(-1)).isTrue();
        assertThat(calendar.minute("9999-01-01 10:00")).isEmpty();
    }
}
