package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.docs.Page;
import crumbclock.report.Golden;
import crumbclock.report.Xml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

    private static final List<String> OF_A_PLAN = List.of("fridge.csv", "plan.html", "plan.json", "timetable.csv");
    private static final String LATE = "move A1 to Fri 09:00 from Fri 08:30";
    private static final String SLOW = "time swirl 200%; more mixer";

    /** One comparison, made once, that several tests look at. */
    @TempDir
    private static Path made;
    private static CommandRun run;

    @TempDir
    private Path folder;

    @BeforeAll
    static void compareOnce() throws IOException {
        run = compare(made);
    }

    private static CommandRun compare(Path folder, Object... more) throws IOException {
        Object[] args = Stream.concat(Stream.of("compare", SmallProblem.in(folder), "away bench", LATE, "edit A1 pieces=12",
                "--steps", 20, "--out", folder.resolve("out")), Arrays.stream(more)).toArray();
        return CommandRun.of(args);
    }

    @Test
    void everyScenarioHasItsFolderAndAllStandInOneTable() throws IOException {
        // an order that is late in one of them ends with 1
        assertThat(run.code()).isEqualTo(1);
        assertThat(names(made.resolve("out"))).containsExactly("away-bench", "base", "compare.csv", "compare.html", "compare.json",
                "edit-a1-pieces-12", "move-a1-to-fri-09-00-from-fri-08-30");
        assertThat(names(made.resolve("out/base"))).isEqualTo(OF_A_PLAN);
        assertThat(names(made.resolve("out/away-bench"))).isEqualTo(OF_A_PLAN);
        assertThat(Files.readString(made.resolve("out/away-bench/plan.html"))).contains("Two dozen, with: away bench");
    }

    @Test
    void theTableIsWhatItWas() throws IOException {
        assertThat(run.err().lines()).allMatch(line -> line.startsWith("comparing, "));
        assertThat(run.out()).endsWith("Look at " + made.resolve("out/compare.html") + "; each plan is in a folder beside it.\n");
        Golden.assertSame("compare.txt", run.out().substring(0, run.out().indexOf("Look at ")));
        Golden.assertSame("compare.csv", Files.readString(made.resolve("out/compare.csv")).replace("\r\n", "\n"));
        Golden.assertSame("compare.json", Files.readString(made.resolve("out/compare.json")));
    }

    @Test
    void equalStepsAndSeedGiveEqualBytes() throws IOException {
        var again = compare(folder, "--quiet");

        assertThat(again).isEqualTo(new CommandRun(1, "", ""));
        for (String name : List.of("compare.html", "compare.csv", "compare.json", "base/plan.json", "away-bench/plan.html")) {
            assertThat(folder.resolve("out").resolve(name)).hasSameBinaryContentAs(made.resolve("out").resolve(name));
        }
    }

    /** The base of a comparison and a scenario's plan are those that plan itself makes. */
    @Test
    void eachPlanIsTheOneThatThePlanCommandMakes() throws IOException {
        SmallProblem.in(folder);

        CommandRun.of("plan", folder.resolve("two-dozen.json"), "--steps", 20, "--quiet", "--out", folder.resolve("base"));
        CommandRun.of("plan", folder.resolve("two-dozen.json"), "--change", "away bench", "--steps", 20, "--quiet",
                "--out", folder.resolve("bench"));

        assertThat(made.resolve("out/base/plan.json")).hasSameBinaryContentAs(folder.resolve("base/plan.json"));
        assertThat(made.resolve("out/away-bench/plan.json")).hasSameBinaryContentAs(folder.resolve("bench/plan.json"));
    }

    @Test
    void thePageIsWellFormedAndLeadsToEveryPlan() throws IOException {
        String page = Files.readString(made.resolve("out/compare.html"));

        Xml.parse(page.replace("<!DOCTYPE html>", ""));
        assertThat(page).contains("href=\"base/plan.html\"", "href=\"away-bench/plan.html\"").doesNotContain("http://", "https://", "<script");
        assertThat(page.split("class=\"pair-drawing\"", -1)).as("drawings of 4 × 3 / 2 pairs").hasSize(7);
        var targets = Pattern.compile("(?:href|xlink:href)=\"#([^\"]+)\"").matcher(page).results().map(found -> found.group(1)).distinct().toList();
        assertThat(targets).contains("pair-0-1", "pair-2-3", "pair-plan-0", "pair-clock")
                .allSatisfy(target -> assertThat(page).contains("id=\"" + target + "\""));
    }

    @Test
    void aStepThatMovedHasALineAndOneThatDidNotHasNone() throws IOException {
        CommandRun.of("compare", SmallProblem.in(folder), "edit A1 title=Other", "move A1 to Fri 16:00", "--steps", 20, "--quiet", "--seeds", 1,
                "--out", folder.resolve("out"));

        String page = Files.readString(folder.resolve("out/compare.html"));

        assertThat(pair(page, "pair-0-1")).contains("0 of ").doesNotContain("class=\"moved");
        assertThat(pair(page, "pair-0-2")).contains("class=\"moved earlier\"").contains("Moved furthest");
    }

    private static String pair(String page, String id) {
        int from = page.indexOf("<article class=\"pair first\" id=\"" + id + '"');
        int at = from < 0 ? page.indexOf("<article class=\"pair\" id=\"" + id + '"') : from;
        return page.substring(at, page.indexOf("</article>", at));
    }

    @Test
    void twoScenariosOfOneNameGetTwoFolders() throws IOException {
        var here = CommandRun.of("compare", SmallProblem.in(folder), SLOW, SLOW, "--steps", 5, "--seeds", 1, "--quiet", "--out", folder.resolve("out"));

        assertThat(here.code()).isZero();
        assertThat(names(folder.resolve("out"))).hasSize(6).contains("base")
                .anyMatch(name -> name.endsWith("-2"));
    }

    @Test
    void faultsOfAllScenariosAreToldAtOnceAndNothingIsWritten() throws IOException {
        var here = CommandRun.of("compare", SmallProblem.in(folder), "away ovn", "drop B7", "none.json", "--out", folder.resolve("out"));

        assertThat(here.code()).isEqualTo(2);
        assertThat(here.err().lines()).hasSize(4).anyMatch(line -> line.contains("read \"ovn\"")).anyMatch(line -> line.contains("read \"B7\""))
                .anyMatch(line -> line.startsWith("none.json: read no such file")).contains("3 faults; nothing was written.");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void optionsOutOfRangeAreRefused() throws IOException {
        Path problem = SmallProblem.in(folder);

        for (var wrong : List.of(List.of("--seeds", "0"), List.of("--steps", "0"), List.of("--seconds", "0"), List.of("--seeds", "21"))) {
            var one = CommandRun.of("compare", problem, "drop A1", wrong.get(0), wrong.get(1));
            assertThat(one.code()).isEqualTo(2);
            assertThat(one.err()).startsWith(wrong.get(0) + ": read " + wrong.get(1) + "; expected ");
        }
        assertThat(CommandRun.of("compare", problem).code()).isEqualTo(2);
    }

    /** Whoever ends it early keeps the base, which is always planned, and is told what is missing. */
    @Test
    @Timeout(60)
    void endedEarlyItKeepsWhatThereIs() throws Exception {
        var interrupt = new Interrupt();
        var ended = new Thread(interrupt::ask);
        ended.setDaemon(true);
        ended.start();
        while (!interrupt.isAsked()) {
            Thread.onSpinWait();
        }

        var here = CommandRun.of(interrupt, "compare", SmallProblem.in(folder), "away bench", LATE, "--out", folder.resolve("out"));

        assertThat(here.code()).isZero();
        assertThat(here.out()).contains("Ended early; not planned: away bench; " + LATE + ".");
        assertThat(names(folder.resolve("out"))).containsExactly("base", "compare.csv", "compare.html", "compare.json");
    }

    @Test
    void everyKeyColumnAndFigureStandsOnThePage() throws IOException {
        String json = Files.readString(made.resolve("out/compare.json"));
        String csv = Files.readString(made.resolve("out/compare.csv"));
        Page page = Page.of("formats-changes.md");

        var words = new TreeSet<>(Arrays.asList(csv.lines().findFirst().orElseThrow().split(",")));
        Pattern.compile("\"([A-Za-z]+)\":").matcher(json).results().forEach(key -> words.add(key.group(1)));
        csv.lines().skip(1).map(line -> line.substring(0, line.indexOf(','))).filter(id -> !id.matches("cost-w0[2-6]"))
                .forEach(id -> words.add(id.startsWith("hands-") ? "hands-ID" : id));

        assertThat(words).hasSizeGreaterThan(30).allSatisfy(word -> assertThat(page.names(word)).as(word).isTrue());
    }

    private static List<String> names(Path directory) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
