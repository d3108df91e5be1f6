package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One iced cake of the library, whose thin coat is forgotten in the fridge; all figures of kitchen and order are invented. */
class RepairCommandTest {

    private static final int EIGHT = 8 * 60;

    @TempDir
    private Path folder;
    private Path problem;
    private int chilledFrom;

    @BeforeEach
    void makeThePlan() throws IOException {
        problem = SmallProblem.in(folder);
        Files.writeString(folder.resolve("orders.csv"), """
                order,title,method,size,layers,servings,hand_over,hand_over_from,way
                A1,Iced cake,abc-layer-cake,8 in,2,20,2026-06-05 19:30,2026-06-05 18:30,pick-up
                """);
        CommandRun run = CommandRun.of("plan", problem, "--steps", 300, "--out", folder.resolve("known"), "--quiet");
        assertThat(run.code()).as(run.err()).isZero();
        chilledFrom = minute("known", "A1/chill-thin-coat", 2);
    }

    @Test
    void should_let_the_coat_stand_out_and_say_so_first() throws IOException {
        // when Ada comes back an hour and a half after the cake went in, where one hour is allowed
        CommandRun run = forgotten("forgotten");

        // then the page and the table have the repair, the coat follows it, and the audit of the file agrees
        assertThat(run.code()).as(run.err() + run.out()).isEqualTo(1);
        assertThat(run.out()).contains("let the hard coat stand out", "Broken in fact");
        int stoodUntil = minute("forgotten", "A1/stand-out", 3);
        assertThat(stoodUntil - minute("forgotten", "A1/stand-out", 2)).isBetween(10, 20); // common practice, no source
        assertThat(minute("forgotten", "A1/coat", 2)).isBetween(stoodUntil, stoodUntil + 5);
        assertThat(Files.readString(folder.resolve("forgotten/plan.json"))).contains("\"repairs\": [\"A1/stand-out\"]");
        CommandRun audit = CommandRun.of("audit", problem, folder.resolve("forgotten/plan.json"));
        assertThat(audit.code()).as(audit.out()).isEqualTo(1);
        assertThat(audit.out()).doesNotContain("NOT SOUND", "the audit adds up");
    }

    @Test
    void should_plan_on_with_a_repair_that_is_done() throws IOException {
        forgotten("forgotten");
        int stoodUntil = minute("forgotten", "A1/stand-out", 3);
        Path day = Files.writeString(folder.resolve("later.csv"), Files.readString(folder.resolve("day.csv"))
                + clock(stoodUntil) + ",A1,let the hard coat stand out,done\n");

        CommandRun run = CommandRun.of("replan", problem, "--plan", folder.resolve("forgotten/plan.json"), "--day", day, "--now",
                clock(stoodUntil + 1), "--steps", 300, "--out", folder.resolve("later"), "--quiet");

        assertThat(run.code()).as(run.err() + run.out()).isEqualTo(1);
        assertThat(minute("later", "A1/stand-out", 3)).isEqualTo(stoodUntil);
        CommandRun audit = CommandRun.of("audit", problem, folder.resolve("later/plan.json"));
        assertThat(audit.out()).doesNotContain("NOT SOUND", "the audit adds up");
    }

    @Test
    void should_name_a_repair_that_the_problem_does_not_know() throws IOException {
        forgotten("forgotten");
        Path file = folder.resolve("forgotten/plan.json");
        Files.writeString(file, Files.readString(file).replace("\"repairs\": [\"A1/stand-out\"]", "\"repairs\": [\"A1/stand-oout\"]"));

        CommandRun audit = CommandRun.of("audit", problem, file);

        assertThat(audit.code()).isEqualTo(2);
        assertThat(audit.errIn(folder)).contains("/day/repairs/0: read \"A1/stand-oout\"; expected a repair of the problem: the id of its first step."
                + " Did you mean \"A1/stand-out\"?");
    }

    private CommandRun forgotten(String out) throws IOException {
        int back = chilledFrom + 90;
        Path day = Files.writeString(folder.resolve("day.csv"), clock(chilledFrom) + ",A1,chill the thin coat,started\n"
                + clock(chilledFrom + 5) + ",,,ada away " + clock(chilledFrom + 5) + "-" + clock(back) + "\n");
        return CommandRun.of("replan", problem, "--plan", folder.resolve("known/plan.json"), "--day", day, "--now", clock(back), "--steps", 300,
                "--out", folder.resolve(out));
    }

    /** A minute from the table: column 2 its start, 3 its end. */
    private int minute(String plan, String step, int column) throws IOException {
        return Files.readAllLines(folder.resolve(plan).resolve("timetable.csv")).stream().map(line -> line.split(",")).filter(cells ->
                Arrays.asList(cells).contains(step) && (cells[4].equals("work") || cells[4].equals("by itself"))).mapToInt(cells ->
                Integer.parseInt(cells[column])).findFirst().orElseThrow();
    }

    private static String clock(int minute) {
        return String.format(Locale.ROOT, "%02d:%02d", (EIGHT + minute) / 60, (EIGHT + minute) % 60);
    }
}
