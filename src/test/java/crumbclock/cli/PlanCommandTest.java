package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {

    private static final List<String> FILES = List.of("fridge.csv", "plan.html", "plan.json", "timetable.csv");

    @TempDir
    private Path folder;

    @Test
    void planThatIsAllOnTimeEndsWith0AndWritesItsFiles() throws IOException {
        // when
        var run = CommandRun.of("plan", SmallProblem.in(folder), "--steps", 20, "--out", folder.resolve("new/out"));

        // then
        assertThat(run.err().lines()).allMatch(line -> line.startsWith("planning, "));
        assertThat(run.code()).isZero();
        assertThat(names(folder.resolve("new/out"))).isEqualTo(FILES);
        assertThat(run.out()).startsWith("Two dozen, Test kitchen\n").contains("Sound: the audit found no broken rule.")
                .endsWith("Look at " + folder.resolve("new/out/plan.html") + "; tables and the plan itself are beside it.\n");
    }

    @Test
    void equalStepsAndSeedGiveEqualBytes() throws IOException {
        Path problem = SmallProblem.in(folder);

        CommandRun.of("plan", problem, "--steps", 20, "--seed", 7, "--quiet", "--out", folder.resolve("one"));
        CommandRun.of("plan", problem, "--steps", 20, "--seed", 7, "--quiet", "--out", folder.resolve("two"));

        for (String name : FILES) {
            assertThat(folder.resolve("one").resolve(name)).hasSameBinaryContentAs(folder.resolve("two").resolve(name));
        }
        assertThat(Files.readString(folder.resolve("one/plan.json"), StandardCharsets.UTF_8)).contains("\"seed\"");
    }

    @Test
    void quietPlanSaysNothing() throws IOException {
        var run = CommandRun.of("plan", SmallProblem.in(folder), "--steps", 20, "--quiet", "--out", folder.resolve("out"));

        assertThat(run).isEqualTo(new CommandRun(0, "", ""));
    }

    @Test
    void orderThatIsNotPossibleEndsWith1AndItsReason() throws IOException {
        // given
        Path problem = SmallProblem.in(folder);
        Files.writeString(folder.resolve("orders.csv"), Files.readString(folder.resolve("orders.csv"))
                .replace("18:00", "09:00").replace("17:00", "08:30"));

        // when
        var run = CommandRun.of("plan", problem, "--steps", 20, "--out", folder.resolve("out"));

        // then
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(1);
        assertThat(run.out()).contains("R01 order of work: its steps need at least ")
                .contains("but there are only 1 h 0 min until Fri 09:00");
        assertThat(names(folder.resolve("out"))).isEqualTo(FILES);
    }

    @Test
    void allFaultsAreToldAtOnceAndNothingIsWritten() throws IOException {
        // when
        var run = CommandRun.of("plan", SmallProblem.withMistakesIn(folder), "--out", folder.resolve("out"));

        // then
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.errIn(folder)).contains("two-dozen.json, line 4").contains("read \"tomorrow\"")
                .contains("orders.csv, line 2, column hand_over: read \"25:10\"")
                .contains("orders.csv, line 2, column way: read \"by owl\"").endsWith("faults; nothing was written.\n");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void missingFileIsNamed() {
        var run = CommandRun.of("plan", folder.resolve("nowhere.json"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).startsWith("nowhere.json: read no such file; expected a file that can be read.")
                .endsWith("1 fault; nothing was written.\n");
    }

    @Test
    void folderInPlaceOfTheProblemIsNamed() {
        var run = CommandRun.of("plan", folder);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.errIn(folder)).startsWith("FOLDER: read a folder; expected a file that can be read.");
    }

    @Test
    void fileInPlaceOfTheFolderIsNamedBeforeAnySearch() throws IOException {
        Path problem = SmallProblem.in(folder);

        var run = CommandRun.of("plan", problem, "--out", folder.resolve("orders.csv/out"));

        assertThat(run).isEqualTo(new CommandRun(2, "", "--out " + folder.resolve("orders.csv/out") + ": "
                + folder.resolve("orders.csv") + " is not a folder; name a folder that is there or can be made\n"));
    }

    @Test
    void folderInPlaceOfAnOutputFileIsNamed() throws IOException {
        Path problem = SmallProblem.in(folder);
        Files.createDirectories(folder.resolve("out/plan.json"));

        var run = CommandRun.of("plan", problem, "--steps", 5, "--quiet", "--out", folder.resolve("out"));

        assertThat(run).isEqualTo(new CommandRun(2, "", folder.resolve("out/plan.json")
                + " cannot be written: it is a folder\n"));
    }

    @Test
    void numbersOutOfRangeAreRefused() throws IOException {
        Path problem = SmallProblem.in(folder);

        assertThat(CommandRun.of("plan", problem, "--steps", 0)).isEqualTo(new CommandRun(2, "",
                "--steps: read 0; expected at least 1\nTry 'crumbclock plan --help'.\n"));
        assertThat(CommandRun.of("plan", problem, "--seconds", 86_401)).isEqualTo(new CommandRun(2, "",
                "--seconds: read 86401; expected 1 to 86400\nTry 'crumbclock plan --help'.\n"));
    }

    /** Whoever interrupts waits for the files; a search without end shows that it is heard. */
    @Test
    @Timeout(60)
    void interruptEndsTheSearchAndKeepsThePlan() throws IOException {
        // given
        var interrupt = new Interrupt();
        var asking = new Thread(interrupt::ask);
        asking.start();

        // when
        var run = CommandRun.of(interrupt, "plan", SmallProblem.in(folder), "--seconds", 86_400, "--out", folder.resolve("out"));

        // then
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(names(folder.resolve("out"))).isEqualTo(FILES);
        assertThat(run.out()).contains("Look at ");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
