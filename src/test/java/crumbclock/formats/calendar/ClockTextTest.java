package crumbclock.formats.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.formats.calendar.ClockText.DayRange;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTextTest {

    @ParameterizedTest
    @CsvSource({"14:30, 14:30", "2:30 pm, 14:30", "2:30pm, 14:30", "2 PM, 14:00", "9:00, 09:00", "12 am, 00:00", "12 pm, 12:00",
        "12:15 a.m., 00:15", "00:00, 00:00", "23:59, 23:59", "14.30, 14:30", "10:00:00, 10:00"})
    void should_read_times_of_day(String text, LocalTime time) {
        assertThat(ClockText.time(text)).contains(time);
    }

    @ParameterizedTest
    @ValueSource(strings = {"25:10", "24:00", "14:60", "14", "13 pm", "0 am", "", "noonish", "14:3"})
    void should_refuse_other_times(String text) {
        assertThat(ClockText.time(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"09:00-17:30, 540, 1050", "9 am - 5:30 pm, 540, 1050", "9:00–17:30, 540, 1050", "9:00 to 17:30, 540, 1050",
        "18:00-01:00, 1080, 1500", "18:00-24:00, 1080, 1440", "00:00-24:00, 0, 1440", "06:00-06:00, 360, 1800"})
    void should_read_stretches_of_a_day(String text, int from, int until) {
        assertThat(ClockText.range(text)).contains(new DayRange(from, until));
    }

    @ParameterizedTest
    @ValueSource(strings = {"09:00", "09:00-", "9-17", "24:00-25:00", "a-b", ""})
    void should_refuse_other_stretches(String text) {
        assertThat(ClockText.range(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-06-05T14:30", "2026-06-05 14:30", "2026-06-05 2:30 pm", "2026-6-5 14:30", "2026-06-05T14:30:00"})
    void should_read_dates_with_times(String text) {
        assertThat(ClockText.moment(text).orElseThrow().local()).contains(LocalDateTime.of(2026, 6, 5, 14, 30));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sat 10:00", "saturday 10:00", "SAT. 10 am", "Satur 10:00", "Sat, 10:00"})
    void should_read_weekdays_with_times(String text) {
        var moment = ClockText.moment(text).orElseThrow();
        assertThat(moment.day()).contains(DayOfWeek.SATURDAY);
        assertThat(moment.time()).isEqualTo(LocalTime.of(10, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"6/7/2026 10:00", "2026-02-30 10:00", "2026-06-05", "Sa 10:00", "Caturday 10:00", "10:00", "", "2026-06-05 25:10"})
    void should_refuse_other_moments(String text) {
        assertThat(ClockText.moment(text)).isEmpty();
    }

    @Test
    void should_read_an_offset() {
        assertThat(ClockText.moment("2026-10-25T01:30+00:00").orElseThrow().offset()).isPresent();
        assertThat(ClockText.moment("2026-10-25T01:30Z").orElseThrow().offset()).isPresent();
    }
}
