package crumbclock.formats.day;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A Monday from midnight on for two days; it is 11:00. */
class DayReaderTest {

    private static final int NOW = 660;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "09:40,cake-1,mix,done | 580 | DONE | 0", "9:40 am;Cake 1;Mix;DONE | 580 | DONE | 0",
        "09:40,order a,cake-1/mix,started | 580 | STARTED | 0", ",cake-1,mix,done | -1 | DONE | 0",
        "09:40,cake-1,mix,slower 20 | 580 | SLOWER | 20", "09:40,cake-1,mix,20 min longer | 580 | SLOWER | 20",
        "09:40,cake-1,mix,spoiled | 580 | SPOILED | 0", "09:40,cake-1,bake,redo from mix | 580 | REDO | 0",
        "09:40,cake-1,,redo mix | 580 | REDO | 0", "09:40,cake-1,mix,skip | 580 | SKIP | 0",
        "Mon 09:40,cake-1,mix,finished | 580 | DONE | 0", "09:40,cake-1,mix done | 580 | DONE | 0"})
    void should_read_what_a_thumb_types(String line, int minute, DayWord word, int minutes) {
        if (line.endsWith("mix done")) {
            assertThat(issues(line)).singleElement().asString().contains("column word");
            return;
        }
        assertThat(read(line).steps()).containsExactly(new StepEvent(1, minute, List.of("cake-1/mix"), word, minutes));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "11:00,,,oven 2 dead | OVEN_DEAD | oven-2 | 660 | 2880", "10:30,oven-2,,dead until 12:00 | OVEN_DEAD | oven-2 | 630 | 720",
        "11:00,,,power cut 14:10-14:40 | POWER_CUT | '' | 850 | 880", "10:50,,fridge,warm | STORE_WARM | fridge | 650 | 2880",
        "10:00,,,ana ill | PERSON_AWAY | ana | 600 | 2880", "10:00,Ana,,away 12:00-13:00 | PERSON_AWAY | ana | 720 | 780",
        "10:00,,,ana away | PERSON_AWAY | ana | 600 | 1440"})
    void should_read_what_happened_to_the_whole_kitchen(String line, KitchenEvent.Kind kind, String id, int from, int until) {
        assertThat(read(line).kitchen()).containsExactly(new KitchenEvent(1, kind, id, new Span(from, until)));
    }

    /** Titles hold commas, and spreadsheets put such cells in quotes (RFC 4180, section 2, number 6). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\'', value = {"09:40,\"Cake for Nia, no milk\",mix,done",
        "09:40; \"Cake for Nia, no milk\" ;mix;done", "09:40\t\"Cake for Nia, no milk\"\tmix\tdone"})
    void should_take_a_cell_in_quotes_as_one(String line) {
        Problem problem = aProblem().person(aPerson("ana")).step(handsOn("cake-1/mix", 10))
                .order(anOrder("Cake for Nia, no milk").cake("cake-1", "cake-1/mix").setAsideBy(2000)).build();
        var log = new IssueLog();

        var day = DayReader.read(SourceFile.ofText("day.csv", line), problem, NOW, log);

        assertThat(log.sorted()).isEmpty();
        assertThat(day.orElseThrow().steps()).containsExactly(new StepEvent(1, 580, List.of("cake-1/mix"), DayWord.DONE, 0));
    }

    @Test
    void should_tell_a_quote_that_is_not_closed() {
        assertThat(issues("09:40,\"cake-1,mix,done")).containsExactly("day.csv, line 1: read \"09:40,\"cake-1,mix,done\"; "
                + "expected cells of which one in quotes ends with a quote.");
    }

    @Test
    void should_read_lines_in_any_order_and_skip_what_is_none() {
        DayLog log = read("time,cake,step,word\n\n# a note to myself\n10:30,cake-1,bake,done\n09:40,cake-1,mix,done\n");

        assertThat(log.steps()).extracting(StepEvent::line).containsExactly(5, 4);
        assertThat(log.notes()).isEmpty();
    }

    @Test
    void should_say_what_it_assumes() {
        assertThat(read("11:40,cake-1,mix,done").notes()).containsExactly(new DayNote(1,
                "Mon 11:40 is still to come; taken as now, Mon 11:00"));
        assertThat(read("09:40,order-b,bake,done").notes()).containsExactly(new DayNote(1,
                "\"bake\" of order-b is cake-2/bake and cake-3/bake; taken as all of them"));
        assertThat(read(",,,ana ill").notes()).containsExactly(new DayNote(1, "no time is said; taken as from now on"));
    }

    @Test
    void should_read_a_time_without_a_day_as_the_last_one_that_has_been() {
        Problem problem = problem();
        var log = new IssueLog();

        // on Tuesday at 00:30, 23:40 was last night
        DayLog day = DayReader.read(SourceFile.ofText("day.csv", "23:40,cake-1,mix,done"), problem, 1470, log).orElseThrow();

        assertThat(day.steps()).extracting(StepEvent::minute).containsExactly(1420);
    }

    @Test
    void should_tell_all_faults_at_once_with_the_nearest_name() {
        assertThat(issues("25:10,cake-1,mix,done\n09:40,cake-9,mix,done\n09:40,cake-1,mux,done\n09:40,cake-1,mix,dome\n"
                + "09:40,,,oven-3 dead\n09:40,cake-1,,done\n09:40,,mix,done")).containsExactly(
                "day.csv, line 1, column time: read \"25:10\"; expected a time such as 11:05 or Sat 11:05, inside the problem.",
                "day.csv, line 2, column cake: read \"cake-9\"; expected an order, cake or batch of the problem. "
                        + "Known: order-a, order-b.",
                "day.csv, line 3, column step: read \"mux\"; expected a step of cake-1. Did you mean \"mix\"?",
                "day.csv, line 4, column word: read \"dome\"; expected started, done, slower with minutes, spoiled, redo from a step, "
                        + "or skip; or time, cake, step, word, or a time and what happened to the kitchen. Did you mean \"done\"?",
                "day.csv, line 5: read \"oven-3\"; expected an oven or a store of the kitchen. Did you mean \"oven-1\" or \"oven-2\"?",
                "day.csv, line 6, column step: read nothing; expected the step that is meant. "
                        + "Only a whole cake that is spoiled needs no step.",
                "day.csv, line 7, column step: read \"mix\"; expected a step of the problem by its whole id, or its cake beside it. "
                        + "Known: cake-1/bake, cake-1/mix, cake-2/bake, cake-2/mix, cake-3/bake, cake-3/mix.");
    }

    @Test
    void should_take_a_whole_cake_as_spoiled() {
        assertThat(read("09:40,cake-1,,spoiled").steps()).containsExactly(
                new StepEvent(1, 580, List.of("cake-1/mix", "cake-1/bake"), DayWord.SPOILED, 0));
    }

    private static DayLog read(String text) {
        var log = new IssueLog();
        return DayReader.read(SourceFile.ofText("day.csv", text), problem(), NOW, log)
                .orElseThrow(() -> new AssertionError(log.sorted()));
    }

    private static List<String> issues(String text) {
        var log = new IssueLog();
        assertThat(DayReader.read(SourceFile.ofText("day.csv", text), problem(), NOW, log)).isEmpty();
        return log.sorted().stream().map(Issue::toString).toList();
    }

    private static Problem problem() {
        var problem = aProblem().person(aPerson("ana")).oven(anOven("oven-1")).oven(anOven("oven-2")).store(aFridge("fridge"));
        for (int cake = 1; cake <= 3; cake++) {
            problem.step(handsOn("cake-" + cake + "/mix", 10)).step(resting("cake-" + cake + "/bake", 30));
        }
        return problem.order(anOrder("order-a").cake("cake-1", "cake-1/bake").setAsideBy(2000))
                .order(anOrder("order-b").cake("cake-2", "cake-2/bake").cake("cake-3", "cake-3/bake").setAsideBy(2000)).build();
    }

    /** A weekend that is over: mixed on Monday and baked on Tuesday, as planned. */
    @Test
    void should_read_a_finished_day_as_near_to_the_plan_as_may_be() {
        var plan = aTimetable().work("cake-1/mix", 1400, 1430, "ana").step("cake-1/bake", 1500, 1540).build();
        String text = "23:10,cake-1,mix,started\n00:05,cake-1,mix,done\n00:50,cake-1,bake,started\nMon 01:30,cake-1,bake,done\n02:00,,,power cut";
        var log = new IssueLog();

        DayLog day = DayReader.readFinished(SourceFile.ofText("day.csv", text), problem(), plan, log).orElseThrow();

        assertThat(day.steps()).extracting(StepEvent::minute).containsExactly(90, 1390, 1445, 1490);
        assertThat(day.kitchen()).extracting(KitchenEvent::when).containsExactly(new Span(120, 2880), new Span(1560, 2880));
        assertThat(day.notes()).singleElement().extracting(DayNote::message).asString().contains("taken as on each day");
    }
}
