package crumbclock.report.view;

import static crumbclock.report.ReportFixture.fri;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Comparator;
import org.junit.jupiter.api.Test;

class RunSheetsTest {

    private final PlanView view = new PlanView(ReportFixture.problem(), ReportPlans.sound());

    @Test
    void rows_follow_the_clock_and_add_up_to_the_hands() {
        var sheets = RunSheets.of(view);

        assertThat(sheets).extracting(RunSheet::personId).containsExactly("odette", "pell");
        for (RunSheet sheet : sheets) {
            var rows = sheet.days().stream().flatMap(day -> day.rows().stream()).toList();
            assertThat(rows).isSortedAccordingTo(Comparator.comparingInt(RunSheet.Row::from));
            int minutes = rows.stream().filter(row -> row.kind() != RunSheet.Kind.REMINDER)
                    .mapToInt(row -> row.until() - row.from()).sum();
            assertThat(minutes).isEqualTo(view.handsMinutes(sheet.personId()));
        }
    }

    @Test
    void a_step_put_down_gives_a_row_for_each_part_on_its_day() {
        var rows = RunSheets.of(view).get(0).days().get(1).rows().stream()
                .filter(row -> row.stepId().equals("A2/1/cover")).toList();

        assertThat(rows).extracting(RunSheet.Row::clock).containsExactly("09:10–09:30", "10:05–10:35");
        assertThat(rows.get(1).notes()).containsExactly("part 2 of 2");
    }

    @Test
    void an_oven_that_only_changes_its_heat_is_not_turned_off_in_between() {
        var reminders = RunSheets.of(view).stream().flatMap(sheet -> sheet.days().stream())
                .flatMap(day -> day.rows().stream()).filter(row -> row.kind() == RunSheet.Kind.REMINDER)
                .map(row -> row.clock() + " " + row.what()).toList();

        assertThat(reminders).containsExactly("17:10 turn on Oven to 175 °C", "17:59 set Oven to 165 °C",
                "19:00 turn off Oven", "18:30–18:55 full clean: Mixer bowl 2");
    }

    @Test
    void a_full_clean_goes_to_somebody_who_has_nothing_else_to_do() {
        // Odette comes first in the kitchen but takes a bake out at 18:52; Pell is free
        var sheets = RunSheets.of(view);

        assertThat(sheets.get(1).days().get(0).rows())
                .anyMatch(row -> row.from() == fri(18, 30) && row.kind() == RunSheet.Kind.REMINDER);
    }

    @Test
    void clock_times_follow_the_zone_through_a_clock_change() {
        var start = ZonedDateTime.of(2026, 10, 24, 12, 0, 0, 0, ZoneId.of("Europe/Dublin"));
        var clock = new ClockText(new ProblemClock(start, 2_880));

        // 13 h after noon it is 01:00, summer time; an hour later 01:00 again
        assertThat(clock.dayTime(13 * 60)).isEqualTo("Sun 01:00");
        assertThat(clock.dayTime(14 * 60)).isEqualTo("Sun 01:00");
        assertThat(clock.dayTime(15 * 60)).isEqualTo("Sun 02:00");
        assertThat(ClockText.duration(59)).isEqualTo("59 min");
        assertThat(ClockText.duration(60)).isEqualTo("1 h");
        assertThat(ClockText.duration(61)).isEqualTo("1 h 01 min");
    }
}
