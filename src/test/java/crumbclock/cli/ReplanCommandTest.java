package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.ProblemClock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two dozen cupcakes, planned, and a day on which something happens. */
class ReplanCommandTest {

    @TempDir
    private Path folder;
    private Path problem;
    private Path plan;

    @BeforeEach
    void makeThePlan() throws IOException {
        problem = SmallProblem.in(folder);
        CommandRun run = CommandRun.of("plan", problem, "--steps", 300, "--out", folder.resolve("known"), "--quiet");
        assertThat(run.code()).as(run.err()).isZero();
        plan = folder.resolve("known/plan.json");
    }

    @Test
    void should_keep_the_plan_when_nothing_happened() throws IOException {
        CommandRun run = replan("time,cake,step,word\n", "08:00", "nothing");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("From Fri 08:00 on\n  nothing is different for anybody\n").contains("Sound: the audit found no broken rule.");
        assertThat(steps(folder.resolve("nothing/plan.json"))).isEqualTo(steps(plan));
        assertThat(folder.resolve("nothing")).isDirectoryContaining("glob:**/{plan.html,timetable.csv,fridge.csv,plan.json}");
    }

    @Test
    void should_say_first_what_is_different_for_whom() throws IOException {
        CommandRun run = replan("17:00,,,ada away 17:00-17:20\n", "16:00", "away");

        assertThat(run.code()).as(run.err() + run.out()).isBetween(0, 1);
        assertThat(run.out()).startsWith("From Fri 16:00 on\n");
        assertThat(Files.readString(folder.resolve("away/plan.html"))).contains("Different from Fri 5 Jun 16:00 on");
    }

    @Test
    void should_give_the_same_files_for_the_same_steps_and_seed() throws IOException {
        replan("10:00,,oven,dead until 17:00\n", "10:00", "one");
        replan("10:00,,oven,dead until 17:00\n", "10:00", "two");

        for (String file : new String[] {"plan.json", "plan.html", "timetable.csv", "fridge.csv"}) {
            assertThat(folder.resolve("one").resolve(file)).hasSameTextualContentAs(folder.resolve("two").resolve(file));
        }
    }

    @Test
    void should_lose_no_plan() throws IOException {
        replan("", "08:00", "one");
        CommandRun run = CommandRun.of("replan", problem, "--plan", folder.resolve("one/plan.json"), "--day", folder.resolve("day.csv"),
                "--now", "Fri 09:00", "--reason", "milk is late", "--out", folder.resolve("two"), "--steps", 300, "--quiet");

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(folder.resolve("two/history/index.csv")).hasContent("number,time,reason,folder\r\n1,,the plan before,001\r\n"
                + "2,08:00,day.csv,002-08-00\r\n3,Fri 09:00,milk is late,003-Fri-09-00\r\n");
        assertThat(folder.resolve("two/history/001/plan.json")).hasSameTextualContentAs(plan);
        assertThat(folder.resolve("two/history/002-08-00/plan.json")).hasSameTextualContentAs(folder.resolve("one/plan.json"));
        assertThat(folder.resolve("two/history/003-Fri-09-00/plan.json")).hasSameTextualContentAs(folder.resolve("two/plan.json"));
    }

    /** Minutes count from the problem's start, and that is seldom midnight. */
    @Test
    void should_name_its_folder_after_the_time_of_the_clock() {
        var clock = new ProblemClock(ZonedDateTime.of(2026, 6, 5, 18, 0, 0, 0, ZoneId.of("Europe/London")), 2_880);

        assertThat(ReplanCommand.usualFolder(Path.of("problems/weekend.json"), clock, 20)).isEqualTo(Path.of("reports/weekend-fri-1820"));
        assertThat(ReplanCommand.usualFolder(Path.of("problems/weekend.json"), clock, 1_460)).isEqualTo(Path.of("reports/weekend-sat-1820"));
    }

    @Test
    void should_never_overwrite_the_plan_that_people_have() throws IOException {
        String before = Files.readString(plan);

        CommandRun run = replan("", "08:00", "known");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).contains("known: there is a plan in it already, which is kept as it is; name another folder");
        assertThat(plan).hasContent(before);
    }

    @Test
    void should_tell_all_faults_of_the_day_file_and_write_nothing() throws IOException {
        CommandRun run = replan("09:00,A1,mixx,done\n09:00,A7,mix,done\n", "09:30", "faults");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).contains("day.csv, line 1, column step: read \"mixx\"").contains("day.csv, line 2, column cake: read \"A7\"")
                .contains("2 faults; nothing was written.");
        assertThat(folder.resolve("faults")).doesNotExist();
    }

    @Test
    void should_ask_for_a_time_inside_the_problem() throws IOException {
        CommandRun run = replan("", "23:30", "late");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--now: read \"23:30\"; expected a time inside the problem");
    }

    /** The oven dies on a tray of cakes of one bowl of batter: the bowl is made again, and the plan of it is taken up once more. */
    @Test
    void should_go_on_from_its_own_plan_on_the_charity_day() throws IOException {
        // given
        Path charity = Path.of("problems", "charity-day.json");
        Path demo = Path.of("demo-data", "charity-day");
        CommandRun first = CommandRun.of("replan", charity, "--plan", demo.resolve("known-plan.json"), "--day", demo.resolve("day.csv"), "--now", "11:00",
                "--steps", 1000, "--out", folder.resolve("eleven"), "--quiet");
        assertThat(first.code()).as(first.err()).isBetween(0, 1);
        Path eleven = folder.resolve("eleven/plan.json");
        assertThat(Files.readString(eleven)).contains("\"again\": [\n      { \"batch\": \"batter-1\",");

        // when
        CommandRun audit = CommandRun.of("audit", charity, eleven);

        // then its cost is the same, with W08 and the kitchen of that day, and nothing planned breaks a rule
        assertThat(audit.code()).as(audit.out()).isEqualTo(1);
        assertThat(audit.out()).doesNotContain("NOT SOUND", "the audit adds up").contains("plan.json: sound");

        // and when: an hour later, with one line more
        Path day = Files.writeString(folder.resolve("longer.csv"), Files.readString(demo.resolve("day.csv")) + "11:40,B17,turn-out,done\n");
        CommandRun second = CommandRun.of("replan", charity, "--plan", eleven, "--day", day, "--now", "12:00", "--steps", 1000,
                "--out", folder.resolve("twelve"), "--quiet");
        assertThat(second.code()).as(second.err() + second.out()).isBetween(0, 1);
        CommandRun again = CommandRun.of("audit", charity, folder.resolve("twelve/plan.json"));
        assertThat(again.code()).as(again.out()).isEqualTo(1);
        assertThat(again.out()).doesNotContain("NOT SOUND", "the audit adds up");
    }

    @Test
    void should_tell_what_is_wrong_with_a_plan_of_the_day_in_its_file() throws IOException {
        replan("10:00,,oven,dead until 17:00\n10:05,A1,mix,slower 5\n", "10:05", "one");
        Path made = folder.resolve("one/plan.json");
        String text = Files.readString(made);
        assertThat(text).contains("{ \"kind\": \"oven\", \"id\": \"oven\", \"from\": 120,");
        Files.writeString(made, text.replace("\"kind\": \"oven\", \"id\": \"oven\"", "\"kind\": \"oven\", \"id\": \"ovn\"")
                .replace("\"again\": []", "\"again\": [{ \"batch\": \"batter\", \"cakes\": [\"A1\"] }]"));

        CommandRun batch = CommandRun.of("audit", problem, made);
        Files.writeString(made, Files.readString(made).replaceFirst("\"again\": .*\\],", "\"again\": [],"));
        CommandRun oven = CommandRun.of("audit", problem, made);

        assertThat(batch.code()).isEqualTo(2);
        assertThat(batch.errIn(folder)).contains("/day/again/0/batch: read \"batter\"; expected a batch of the problem, or one made again above");
        assertThat(oven.code()).isEqualTo(2);
        assertThat(oven.errIn(folder)).contains("/day/away/0/id: read \"ovn\"; expected the id of an oven of the kitchen. Did you mean \"oven\"?");
    }

    private CommandRun replan(String day, String now, String out) throws IOException {
        Path file = Files.writeString(folder.resolve("day.csv"), day);
        return CommandRun.of("replan", problem, "--plan", plan, "--day", file, "--now", now, "--out", folder.resolve(out), "--steps", 300);
    }

    /** All that is placed: from the steps to the cleanings; a bound, which only a first plan has, is not part of it. */
    private static String steps(Path file) throws IOException {
        String text = Files.readString(file);
        String placed = text.substring(text.indexOf("\"steps\""), text.indexOf(']', text.indexOf("\"cleanings\"")));
        assertThat(placed).contains("\"touches\"", "\"ovenRuns\"", "\"placements\"");
        return placed;
    }
}
