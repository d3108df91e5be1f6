package crumbclock.formats.csv;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.report.Golden;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTablesTest {

    private static List<CSVRecord> read(String text) throws IOException {
        var format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (var parser = format.parse(new StringReader(text))) {
            return parser.getRecords();
        }
    }

    @Test
    void timetable_is_as_kept() {
        Golden.assertSame("timetable.csv", TimetableCsv.write(ReportFixture.problem(), ReportPlans.sound()));
    }

    @Test
    void fridge_is_as_kept() {
        Golden.assertSame("fridge.csv", FridgeCsv.write(ReportFixture.problem(), ReportPlans.sound()));
    }

    @Test
    void timetable_comes_back_with_every_work_and_touch() throws IOException {
        var plan = ReportPlans.sound();
        var rows = read(TimetableCsv.write(ReportFixture.problem(), plan));

        assertThat(rows).filteredOn(row -> row.get("kind").equals("work")).hasSize((int) plan.timetable().steps()
                .stream().flatMap(step -> step.work().stream()).mapToLong(work -> work.spans().size()).sum());
        assertThat(rows).filteredOn(row -> row.get("kind").equals("put in") || row.get("kind").equals("take out"))
                .hasSameSizeAs(plan.timetable().touches());
        assertThat(rows).filteredOn(row -> row.get("step_id").equals("A1/hand-over")).singleElement()
                .extracting(row -> row.get("title")).isEqualTo(ReportFixture.NASTY_TITLE);
        assertThat(rows).filteredOn(row -> row.get("item").equals("B1"))
                .allSatisfy(row -> assertThat(row.get("orders")).isEqualTo("A1"));
    }

    @Test
    void fridge_comes_back_with_every_placement_in_place() throws IOException {
        var plan = ReportPlans.sound();
        var rows = read(FridgeCsv.write(ReportFixture.problem(), plan)).stream()
                .filter(row -> row.get("kind").equals("plan")).toList();

        assertThat(rows).hasSameSizeAs(plan.timetable().placements());
        plan.timetable().placements().forEach(place -> assertThat(rows).anySatisfy(row -> {
            assertThat(row.get("step_id")).isEqualTo(place.stepId());
            assertThat(row.get("x_mm")).isEqualTo(Integer.toString(place.xMm()));
            assertThat(row.get("y_mm")).isEqualTo(Integer.toString(place.yMm()));
            assertThat(row.get("from_minute")).isEqualTo(Integer.toString(place.when().start()));
            assertThat(row.get("until_minute")).isEqualTo(Integer.toString(place.when().end()));
        }));
    }

    @Test
    void says_in_every_row_when_the_plan_does_not_hold() throws IOException {
        assertThat(read(TimetableCsv.write(ReportFixture.problem(), ReportPlans.unsound())))
                .allSatisfy(row -> assertThat(row.get("sound")).isEqualTo("no"));
        assertThat(read(FridgeCsv.write(ReportFixture.problem(), ReportPlans.unsound())))
                .allSatisfy(row -> assertThat(row.get("sound")).isEqualTo("no"));
    }

    @Test
    void ends_each_line_with_carriage_return_and_line_feed() {
        String text = FridgeCsv.write(ReportFixture.problem(), ReportPlans.sound());

        assertThat(text).endsWith("\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "＝1", "'=1", "plain", "'plain", "", "1-1"})
    void a_text_stays_text_and_comes_back_when_its_apostrophe_is_taken_off(String text) throws IOException {
        var row = read(OutCells.table(List.of("a", "b"), List.of(List.of(text, -1)))).get(0);

        String back = row.get("a");
        boolean guarded = text.matches("(?s)'*[=+\\-@\t\r\n＝＋－＠].*");
        assertThat(back).isEqualTo(guarded ? "'" + text : text);
        assertThat(row.get("b")).isEqualTo("-1");
    }
}
