package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.docs.Page;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Wish;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** What README and pages say of commands, options, exit codes and files is so. */
class DocumentedCommandsTest {

    private static final Page README = Page.at(Path.of("README.md"));
    private static final Pattern COMMAND = Pattern.compile("crumbclock(?:\\.jar)? ([a-z]+)(?= [A-Za-z\\[])");
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z]+");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:\\s]+)(?:#[^)]*)?\\)");
    private static final Pattern EXIT_CODE_ROW = Pattern.compile("\\n\\| ([0-9]+) \\|");

    @TempDir
    private Path folder;

    @Test
    void readmeNamesTheCommandsThatThereAre() {
        assertThat(found(COMMAND, README.text(), 1)).isEqualTo(Set.of("plan", "replan", "compare", "promise", "paces", "check", "audit"));
        assertThat(found(COMMAND, README.text(), 1)).allSatisfy(
                command -> assertThat(CommandRun.of(command, "--help").code()).as(command).isZero());
    }

    @Test
    void readmeNamesTheOptionsThatThereAre() {
        Set<String> known = Stream.of("plan", "replan", "compare", "promise", "paces", "check", "audit")
                .flatMap(command -> found(OPTION, CommandRun.of(command, "--help").out(), 0).stream())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(found(OPTION, README.text(), 0)).isEqualTo(known);
    }

    @Test
    void readmeNamesTheExitCodesThatThereAre() {
        Set<String> known = Arrays.stream(Exit.values()).map(exit -> String.valueOf(exit.code()))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(found(EXIT_CODE_ROW, README.text(), 1)).isEqualTo(known);
    }

    @Test
    void readmeExplainsEveryRuleAndWish() {
        assertThat(Rule.values()).allSatisfy(rule -> assertThat(README.text()).contains("\n| " + rule + " | "));
        assertThat(Wish.values()).allSatisfy(wish -> assertThat(README.text()).contains("\n| " + wish + " | "));
    }

    @ParameterizedTest
    @CsvSource({"README.md", "DEVELOPERS.md", "src/site/markdown/formats.md", "src/site/markdown/formats-kitchen.md",
        "src/site/markdown/formats-orders.md", "src/site/markdown/formats-problem.md", "src/site/markdown/formats-methods.md",
        "src/site/markdown/formats-plan.md", "src/site/markdown/formats-changes.md", "src/site/markdown/formats-day.md", "src/site/markdown/formats-paces.md", "src/site/markdown/formats-rules.md"})
    void everyLinkLeadsToAFile(Path page) {
        Path beside = page.getParent() == null ? Path.of("") : page.getParent();

        assertThat(found(LINK, Page.at(page).text(), 1)).isNotEmpty()
                .allSatisfy(link -> assertThat(beside.resolve(link)).exists());
    }

    /** The rows of the cut, reckoned with the columns that it shows, are rows of the table. */
    @Test
    void readmeShowsOrdersOfTheDemo() throws IOException {
        String orders = Files.readString(Path.of("demo-data", "five-due-saturday", "orders.csv"));
        var rows = README.text().lines().filter(line -> line.matches("\\| A[1-5] \\|.*")).toList();

        assertThat(rows).isNotEmpty().allSatisfy(row -> assertThat(Arrays.stream(row.split("\\|")).map(String::strip)
                .filter(cell -> !cell.isEmpty())).allSatisfy(cell -> assertThat(orders).contains(cell)));
    }

    @ParameterizedTest
    @CsvSource({"loaf-problem.json, loaf-plan.json, loaf-audit.txt, 0", "loaf-problem.json, loaf-moved-plan.json, loaf-moved-audit.txt, 3",
        "loaf-running-problem.json, loaf-plan.json, loaf-running-audit.txt, 3"})
    void theAuditSaysWhatThePagesSay(String problem, String plan, String expected, int code) throws IOException {
        Map<String, String> files = Page.writeFormatExamples(folder);
        String moved = files.get("loaf-plan.json").replace("\"x\": 10, \"y\": 200", "\"x\": 5, \"y\": 200");
        assertThat(moved).isNotEqualTo(files.get("loaf-plan.json"));
        Files.writeString(folder.resolve("loaf-moved-plan.json"), moved);

        var run = CommandRun.of("audit", folder.resolve(problem), folder.resolve(plan));

        assertThat(run.out().replace(folder + "/", "")).isEqualTo(files.get(expected));
        assertThat(run.code()).isEqualTo(code);
    }

    @Test
    void theHelpOfTheProgramNamesEveryCommand() {
        String help = CommandRun.of("--help").out();

        assertThat(help).contains("plan", "replan", "compare", "promise", "paces", "check", "audit");
        assertThat(new CommandLine(new CrumbclockCommand()).getCommandName()).isEqualTo("crumbclock");
    }

    private static Set<String> found(Pattern pattern, String text, int group) {
        Set<String> found = new TreeSet<>();
        var matches = pattern.matcher(text);
        while (matches.find()) {
            found.add(matches.group(group));
        }
        return found;
    }
}
