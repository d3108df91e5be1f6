package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.docs.Page;
import crumbclock.domain.pace.PaceWord;
import crumbclock.report.Xml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The two weekends of the demo, copied, and what is learned from them. */
class PacesCommandTest {

    private static final Path DEMO = Path.of("demo-data", "two-weekends");

    @TempDir
    private Path folder;

    @BeforeEach
    void copyTheDemo() throws IOException {
        for (String name : List.of("kitchen.json", "first.json", "first-orders.csv", "first-plan.json", "first-day.csv", "second.json",
                "second-orders.csv", "second-plan.json", "second-day.csv")) {
            Files.copy(DEMO.resolve(name), folder.resolve(name));
        }
    }

    private CommandRun paces(String... more) {
        List<Object> args = new ArrayList<>(List.of("paces", at("first.json"), at("second.json"), "--plan", at("first-plan.json"), "--day",
                at("first-day.csv"), "--plan", at("second-plan.json"), "--day", at("second-day.csv"), "--out", at("out")));
        args.addAll(List.of(more));
        return CommandRun.of(args.toArray());
    }

    private Path at(String name) {
        return folder.resolve(name);
    }

    private String kitchen() throws IOException {
        return Files.readString(at("kitchen.json"));
    }

    @Test
    void should_show_tables_and_write_the_files_and_nothing_else() throws IOException {
        String before = kitchen();

        CommandRun run = paces();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("The kitchen in Elder Row: real minutes of 2 day files beside the figures in use\n")
                .containsPattern("\nNell +in use +seen +middle half +steps\n").containsPattern("\n  coating +1 +1\\.33 +1\\.25 to 1\\.36 +11 +slower than in use\n")
                .containsPattern("\nBy itself, minutes +planned").contains("E4/mix, Sat 18 Apr 09:34–09:48: the power was cut",
                        "what it made was spoiled", "kitchen.json stays as it is. With --adopt it would change:",
                        "  Nell, coating: 1 (not named before) → 1.33\n");
        assertThat(at("out")).isDirectoryContaining("glob:**/{paces.html,paces.csv,paces.json}");
        assertThat(kitchen()).isEqualTo(before);
    }

    @Test
    void should_draw_each_counted_step_to_scale_on_a_page_that_stands_alone() throws IOException {
        paces("--quiet");
        String page = Files.readString(at("out/paces.html"));

        var root = Xml.parse(page).getDocumentElement();
        assertThat(page).doesNotContain("http:", "https:", "<script", "<link", "<img");
        assertThat(Xml.withClass(root, "svg", "pace-drawing")).hasSize(2);
        Matcher counted = Pattern.compile("\"realMinutes\"").matcher(Files.readString(at("out/paces.json")));
        // one ring is the key's
        assertThat(Xml.withClass(root, "circle", "ring")).hasSize((int) counted.results().count() + 1);
        assertThat(page).contains("in use 1.5", "seen 1.33", "too few to say");
    }

    @Test
    void should_adopt_the_paces_and_plan_with_them() throws IOException {
        String before = kitchen();

        CommandRun run = paces("--adopt");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("kitchen.json was changed:\n  Nell, coating: 1 (not named before) → 1.33\n", "  Jory, learns, baking: 1.5 → 1.4\n");
        assertThat(kitchen()).isEqualTo(before.replace("\"skills\": [\"baking\", \"decorating\", \"writing\"]\n",
                "\"skills\": [\"baking\", \"decorating\", \"writing\"],\n      \"pace\": { \"coating\": 1.33, \"filling\": 1.06 }\n")
                .replace("\"baking\": 1.5", "\"baking\": 1.4").replace("\"coating\": 1.5\n      }",
                        "\"coating\": 1.5,\n        \"boxing\": 1.33,\n        \"wrapping\": 1.5\n      }"));
        assertThat(CommandRun.of("check", at("first.json")).code()).isZero();
        // thin coats of 8 and 6 min are 10.64 and 7.98, and 11 and 8 in a plan
        CommandRun plan = CommandRun.of("plan", at("first.json"), "--steps", 600, "--out", at("planned"), "--quiet");
        assertThat(plan.code()).as(plan.err()).isBetween(0, 1);
        assertThat(Files.readString(at("planned/timetable.csv")).lines().filter(line -> line.contains("/thin-coat,") && line.contains(",work,"))
                .filter(line -> line.contains(",nell,"))).isNotEmpty()
                .allSatisfy(line -> assertThat(minutes(line)).isEqualTo(line.contains(",E3/") ? 8 : 11));
    }

    private static int minutes(String row) {
        String[] cells = row.split(",");
        return Integer.parseInt(cells[3]) - Integer.parseInt(cells[2]);
    }

    @Test
    void should_find_nothing_more_to_change_after_that() throws IOException {
        paces("--adopt");
        String adopted = kitchen();

        CommandRun again = paces("--adopt");

        assertThat(again.out()).contains("kitchen.json stays as it is: no pace was seen often enough and differs enough");
        assertThat(kitchen()).isEqualTo(adopted);
    }

    @Test
    void should_give_the_same_files_for_lines_in_another_order() throws IOException {
        paces("--quiet");
        List<String> files = List.of("paces.html", "paces.csv", "paces.json");
        List<String> expected = new ArrayList<>();
        for (String file : files) {
            expected.add(Files.readString(at("out").resolve(file)));
        }
        for (String day : List.of("first-day.csv", "second-day.csv")) {
            List<String> lines = new ArrayList<>(Files.readAllLines(at(day)).stream().skip(1).toList());
            Collections.shuffle(lines, new Random(7));
            Files.write(at(day), lines);
        }

        paces("--quiet");

        for (int i = 0; i < files.size(); i++) {
            assertThat(at("out").resolve(files.get(i))).hasContent(expected.get(i));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "first.json --plan first-plan.json --day first-day.csv --day second-day.csv | read 1 plan and 2 day files; expected a --day for each --plan",
        "first.json second.json --plan first-plan.json --day first-day.csv | read 2 problem files and 1 plan; expected one problem file for all plans",
        "first.json --plan first-plan.json --day first-day.csv --plan first-plan.json --day first-day.csv | twice; expected each day file once"})
    void should_say_so_when_plans_and_day_files_do_not_pair(String args, String expected) {
        List<Object> all = new ArrayList<>(List.of("paces", "--out", at("out")));
        for (String arg : args.strip().split(" ")) {
            all.add(arg.startsWith("--") ? arg : at(arg));
        }

        CommandRun run = CommandRun.of(all.toArray());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(expected.strip());
        assertThat(at("out")).doesNotExist();
    }

    @Test
    void should_tell_the_faults_of_all_files_at_once_and_write_nothing() throws IOException {
        Files.writeString(at("first-day.csv"), "09:00,E1,thin-coatt,done\n");
        Files.writeString(at("second-day.csv"), "25:00,G1,coat,done\n09:00,G9,coat,done\n");
        Files.writeString(at("second-plan.json"), Files.readString(at("second-plan.json")).replace("\"G2/coat\"", "\"G2/coad\""));
        String before = kitchen();

        CommandRun run = paces("--adopt");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).contains("first-day.csv, line 1, column step: read \"thin-coatt\"", "second-day.csv, line 1, column time: read \"25:00\"",
                "second-day.csv, line 2, column cake: read \"G9\"", "second-plan.json, line", "G2/coad", "faults; nothing was written.");
        assertThat(at("out")).doesNotExist();
        assertThat(kitchen()).isEqualTo(before);
    }

    @Test
    void should_say_which_plan_is_another_weekends() {
        CommandRun run = CommandRun.of("paces", at("first.json"), "--plan", at("second-plan.json"), "--day", at("first-day.csv"), "--out", at("out"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).contains("second-plan.json, line 2, /problem: read \"Elder Row, the second weekend\"");
    }

    @Test
    void should_write_into_the_problem_file_when_the_kitchen_stands_in_there() throws IOException {
        String whole = Files.readString(at("first.json")).replace("\"kitchen.json\"", kitchen().strip());
        Files.writeString(at("first.json"), whole);

        CommandRun run = CommandRun.of("paces", at("first.json"), "--plan", at("first-plan.json"), "--day", at("first-day.csv"), "--adopt", "--quiet",
                "--out", at("out"));

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("first.json was changed:");
        assertThat(Files.readString(at("first.json"))).isNotEqualTo(whole).startsWith(whole.substring(0, whole.indexOf("\"skills\"")))
                .endsWith(whole.substring(whole.indexOf("\"ovens\"")));
        assertThat(CommandRun.of("check", at("first.json")).code()).isZero();
    }

    @Test
    void should_say_little_of_a_day_on_which_only_ends_were_written() throws IOException {
        Files.write(at("first-day.csv"), Files.readAllLines(at("first-day.csv")).stream().filter(line -> !line.endsWith("started")).toList());

        CommandRun run = CommandRun.of("paces", at("first.json"), "--plan", at("first-plan.json"), "--day", at("first-day.csv"), "--out", at("out"));

        assertThat(run.code()).isZero();
        assertThat(run.out()).containsPattern("  coating +1\\.5 +- +- +0 +none seen\n").containsPattern("\\d+ steps are recorded as done with no time of start")
                .contains("stays as it is: no pace was seen");
    }

    @Test
    void should_name_people_who_come_in_with_a_change_and_have_no_figure_to_write() throws IOException {
        for (String plan : List.of("first-plan.json", "second-plan.json")) {
            Files.writeString(at(plan), Files.readString(at(plan)).replace("\"nell\"", "\"wim\"")
                    .replace(" weekend\",", " weekend, with: copy nell as wim\","));
        }
        String before = kitchen();

        CommandRun run = paces("--change", "copy nell as wim", "--adopt");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("wim comes in with --change and does not stand in", "kitchen.json was changed:\n  Jory, learns, baking: 1.5 → 1.4\n");
        assertThat(kitchen()).isNotEqualTo(before).doesNotContain("1.33, \"filling\"");
    }

    @Test
    void should_show_the_paces_so_far_when_planning_again() throws IOException {
        CommandRun run = CommandRun.of("replan", at("first.json"), "--plan", at("first-plan.json"), "--day", at("first-day.csv"), "--now", "Sat 10:00",
                "--steps", 50, "--out", at("again"));

        assertThat(run.code()).as(run.err()).isBetween(0, 1);
        assertThat(run.out()).contains("Real minutes so far, beside the figures in use\n").containsPattern("  Nell, coating: pace 1\\.\\d+ so far \\(\\d+ steps\\), 1 in use\n");
        assertThat(Files.readString(at("again/plan.html"))).contains("<h3>Real minutes so far</h3>", "Nell, coating: pace 1.");
    }

    /** Every key and column that is written stands on the page. */
    @Test
    void should_be_documented() throws IOException {
        paces("--quiet");
        Page page = Page.of("formats-paces.md");

        assertThat(Pattern.compile("\"([A-Za-z]+)\":").matcher(Files.readString(at("out/paces.json"))).results().map(found -> found.group(1)).distinct())
                .isNotEmpty().allSatisfy(key -> assertThat(page.names(key)).as(key).isTrue());
        assertThat(Files.readAllLines(at("out/paces.csv")).get(0).split(","))
                .allSatisfy(column -> assertThat(page.names(column)).as(column).isTrue());
        assertThat(PaceWord.values()).allSatisfy(word -> assertThat(page.names(word.words())).as(word.words()).isTrue());
    }
}
