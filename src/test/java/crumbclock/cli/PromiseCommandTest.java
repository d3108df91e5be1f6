package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.docs.Page;
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

/** Two dozen cupcakes are promised, and two dozen more are asked for. */
class PromiseCommandTest {

    private static final String ONE_MORE = "copy A1 as A2 handOver=\"Fri 19:00\" handOverFrom=\"Fri 19:00\" title=\"Two dozen more\"";

    /** One answer, found once, that several tests look at. */
    @TempDir
    private static Path made;
    private static CommandRun run;

    @TempDir
    private Path folder;

    @BeforeAll
    static void askOnce() throws IOException {
        run = ask(made);
    }

    private static CommandRun ask(Path folder, Object... more) throws IOException {
        return CommandRun.of(Stream.concat(Stream.of("promise", SmallProblem.in(folder), ONE_MORE, "--steps", 60, "--out", folder.resolve("out")),
                Arrays.stream(more)).toArray());
    }

    @Test
    void itAnswersAllQuestionsInPlainSentences() {
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("A2, Two dozen more: wished for Fri 19:00, asked Fri 08:00\nYes").contains("\nEarliest hand-over\n",
                "  with nobody else worse off ", "  with all others on time ", "  whatever it costs the others ",
                "\nUntil when it can wait for a yes; later may be possible\n", "\nWhat would help: ", "\nThe others, with A2 at Fri 19:00\n");
        assertThat(run.out()).endsWith("Look at " + made.resolve("out/promise.html") + "; each plan is in a folder beside it.\n");
        assertThat(run.err().lines()).allMatch(line -> line.startsWith("looking, "));
    }

    @Test
    void thePageIsWellFormedAndLeadsToPlansThatAreThere() throws IOException {
        String page = Files.readString(made.resolve("out/promise.html"));

        Xml.parse(page.replace("<!DOCTYPE html>", ""));
        assertThat(page).contains("class=\"promise-strip\"", "href=\"known/plan.html\"").doesNotContain("http://", "https://", "<script");
        assertThat(Pattern.compile("href=\"([^\"#]+)\"").matcher(page).results().map(found -> found.group(1)))
                .hasSizeGreaterThan(2).allSatisfy(link -> assertThat(made.resolve("out").resolve(link)).exists());
    }

    /** What is written can be read, and holds. */
    @Test
    void thePlanThatPeopleHaveCanBeGivenInsteadOfPlanned() throws IOException {
        CommandRun again = ask(folder, "--plan", made.resolve("out/known/plan.json"), "--quiet");

        assertThat(again).isEqualTo(new CommandRun(0, "", ""));
        for (String name : List.of("promise.html", "promise.json", "known/timetable.csv")) {
            assertThat(folder.resolve("out").resolve(name)).hasSameBinaryContentAs(made.resolve("out").resolve(name));
        }
    }

    @Test
    void equalStepsAndSeedGiveEqualBytes() throws IOException {
        ask(folder, "--quiet");

        try (Stream<Path> files = Files.walk(made.resolve("out"))) {
            assertThat(files.filter(Files::isRegularFile)).hasSizeGreaterThan(8)
                    .allSatisfy(file -> assertThat(folder.resolve("out").resolve(made.resolve("out").relativize(file))).hasSameBinaryContentAs(file));
        }
    }

    @Test
    void anOrderThatCannotBeOnTimeEndsWithOne() throws IOException {
        CommandRun late = CommandRun.of("promise", SmallProblem.in(folder), "copy A1 as A2 handOver=\"Fri 09:00\" handOverFrom=\"Fri 08:30\"",
                "--steps", 20, "--out", folder.resolve("out"));

        assertThat(late.code()).isEqualTo(1);
        assertThat(late.out()).contains("\nNo. No plan whatever can have A2 at Fri 09:00; before Fri ", " it cannot be handed over.\n");
    }

    @Test
    void nothingOfTheNewOrderBeginsBeforeNow() throws IOException {
        ask(folder, "--now", "Fri 12:00", "--quiet");

        String plan = Files.readString(folder.resolve("out/as-wished/timetable.csv"));
        assertThat(plan.lines().filter(line -> line.contains("A2"))).isNotEmpty().noneMatch(line -> line.matches(".*2026-06-05T(08|09|10|11):.*"));
    }

    @Test
    void oneOrderMoreAndNothingElseIsWhatIsExpected() throws IOException {
        Path problem = SmallProblem.in(folder);

        assertThat(refused(problem, "away bench")).isEqualTo("ORDER away bench: brings no new order; expected exactly one. "
                + "Bring one with \"add\", \"addFrom\" or \"copy\".\n");
        assertThat(refused(problem, "copy A1 as A2; copy A1 as A3")).startsWith("ORDER copy A1 as A2; copy A1 as A3: brings 2 new orders (A2, A3); expected exactly one.");
        assertThat(refused(problem, "copy A1 as A2; away bench")).contains("changes more than the one new order A2", "Give other changes with --change.");
        assertThat(refused(problem, "copy A1 as A2; edit A1 pieces=12")).contains("changes more than the one new order A2");
        assertThat(refused(problem, "copy A9 as A2")).contains("read \"A9\"").endsWith("1 fault; nothing was written.\n");
        assertThat(refused(problem, ONE_MORE, "--now", "Mon 25:00")).startsWith("--now: read \"Mon 25:00\"; expected a time inside the problem");
        assertThat(refused(problem, ONE_MORE, "--steps", 0)).startsWith("--steps: read 0; expected at least 1");
    }

    private String refused(Path problem, Object... args) {
        CommandRun refused = CommandRun.of(Stream.concat(Stream.of("promise", problem), Stream.concat(Arrays.stream(args),
                Stream.of("--out", folder.resolve("none")))).toArray());
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(folder.resolve("none")).doesNotExist();
        return refused.errIn(folder);
    }

    @Test
    void otherChangesComeBeforeTheOrder() throws IOException {
        CommandRun changed = ask(folder, "--change", "more mixer", "--quiet");

        assertThat(changed).isEqualTo(new CommandRun(0, "", ""));
        assertThat(Files.readString(folder.resolve("out/known/plan.html"))).contains("Two dozen, with: more mixer").doesNotContain("A2");
    }

    @Test
    void aPlanThatDoesNotHoldIsRefused() throws IOException {
        String plan = Files.readString(made.resolve("out/known/plan.json"));
        Path broken = Files.writeString(folder.resolve("broken.json"), plan.replaceFirst("\"lateMinutes\": 0", "\"lateMinutes\": 7"));

        CommandRun refused = ask(folder, "--plan", broken);

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("breaks 1 rule of this problem, the first: ", "expected a sound plan of it");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aPlanMadeWithoutTheChangesIsChangedFirst() throws IOException {
        // given half an hour of her shift less, when the known plan has her at work
        CommandRun changed = ask(folder, "--plan", made.resolve("out/known/plan.json"), "--change", "away ada from \"Fri 15:00\" to \"Fri 15:30\"");

        assertThat(changed.code()).as(changed.err()).isBetween(0, 1);
        assertThat(changed.out()).matches("(?s)The plan was made without the changes; with them (no step of it moves|one step of it moves|\\d+ steps of it move)\\. "
                + "What the order costs is told against known/plan.html.\nA2, Two dozen more: .*");
        CommandRun audit = CommandRun.of("audit", folder.resolve("two-dozen.json"), folder.resolve("out/known/plan.json"), "--change",
                "away ada from \"Fri 15:00\" to \"Fri 15:30\"");
        assertThat(audit.code()).as(audit.out() + audit.err()).isZero();
    }

    @Test
    void aPlanMadeDuringTheDayIsGoneOnFrom() throws IOException {
        Path problem = SmallProblem.in(folder);
        Path day = Files.writeString(folder.resolve("day.csv"), "time,cake,step,word\n12:00,,oven,dead until 13:00\n");
        CommandRun replanned = CommandRun.of("replan", problem, "--plan", made.resolve("out/known/plan.json"), "--day", day, "--now", "12:00",
                "--steps", 60, "--out", folder.resolve("day"), "--quiet");
        assertThat(replanned.code()).as(replanned.err()).isBetween(0, 1);

        CommandRun asked = ask(folder, "--plan", folder.resolve("day/plan.json"));
        CommandRun tooEarly = ask(folder, "--plan", folder.resolve("day/plan.json"), "--now", "Fri 11:00");

        assertThat(asked.code()).as(asked.err()).isBetween(0, 1);
        assertThat(asked.out()).startsWith("A2, Two dozen more: wished for Fri 19:00, asked Fri 12:00\n");
        assertThat(tooEarly.code()).isEqualTo(2);
        assertThat(tooEarly.err()).startsWith("--now: read \"Fri 11:00\"; expected Fri 12:00 or later, since the plan says how things stood then");
    }

    /** Anybody can check the plan that is promised, with the order as it was wished. */
    @Test
    void thePlanAsWishedStandsTheAudit() {
        CommandRun audit = CommandRun.of("audit", made.resolve("two-dozen.json"), made.resolve("out/as-wished/plan.json"), "--change", ONE_MORE);

        assertThat(audit.code()).as(audit.out() + audit.err()).isZero();
    }

    @Test
    void plansOfAnEarlierRunAreTakenAwayAndNothingElse() throws IOException {
        // given folders that the page of an earlier run led to, one with a note in it, and one that it does not know
        Path out = folder.resolve("out");
        for (String old : List.of("help-mixer", "help-noted", "holiday")) {
            Files.createDirectories(out.resolve(old));
            Files.writeString(out.resolve(old).resolve("plan.html"), "old");
        }
        Files.writeString(out.resolve("help-noted/note.txt"), "ring Ada");
        Files.writeString(out.resolve("promise.json"), "{ \"problem\": \"Two dozen\", \"offers\": [], \"helps\": [{ \"with\": { \"plan\": \"help-mixer\" } }, "
                + "{ \"with\": { \"plan\": \"help-noted\" } }, { \"with\": { \"plan\": \"../up\" } }] }");

        ask(folder, "--quiet");

        assertThat(out.resolve("help-mixer")).doesNotExist();
        assertThat(out.resolve("help-noted/plan.html")).doesNotExist();
        assertThat(out.resolve("help-noted/note.txt")).exists();
        assertThat(out.resolve("holiday/plan.html")).hasContent("old");
        assertThat(out.resolve("as-wished/plan.html")).exists();
    }

    @Test
    void thePlanThatPeopleHaveIsNotOverwritten() throws IOException {
        ask(folder, "--quiet");
        Path known = folder.resolve("out/as-wished/plan.json");
        String before = Files.readString(known);

        CommandRun refused = ask(folder, "--plan", known);

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.errIn(folder)).contains("--out out: the plan that people have lies in it and is kept as it is; name another folder");
        assertThat(Files.readString(known)).isEqualTo(before);
    }

    /** Whoever ends it early keeps the plan without the order, and is told what is missing. */
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

        var here = CommandRun.of(interrupt, "promise", SmallProblem.in(folder), ONE_MORE, "--out", folder.resolve("out"));

        assertThat(here.code()).isEqualTo(1);
        assertThat(here.out()).contains("Ended early: what is missing below was not looked for.");
        assertThat(folder.resolve("out/known/plan.json")).exists();
        assertThat(folder.resolve("out/promise.html")).exists();
    }

    @Test
    void everyKeyStandsOnThePage() throws IOException {
        Page page = Page.of("formats-changes.md");
        var words = new TreeSet<String>();
        Pattern.compile("\"([A-Za-z]+)\":").matcher(Files.readString(made.resolve("out/promise.json"))).results().forEach(key -> words.add(key.group(1)));

        assertThat(words).hasSizeGreaterThan(20).allSatisfy(word -> assertThat(page.names(word)).as(word).isTrue());
    }
}
