package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.formats.json.FolderNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The kept pages of a comparison, a promise and a day that goes another way: they hang together, and the README's commands write them. After a
 * change that is meant to change plans, run those commands again and keep of what they write the files that are kept now.
 */
class SamplePagesTest {

    private static final Path REPORTS = Path.of("reports");
    private static final String WHAT_IF = "five-due-saturday-what-if";
    private static final String PROMISE = "late-order-promise";
    private static final String DAY = "charity-day-1100";
    private static final Pattern AT = Pattern.compile("\"(handOver|kept)At\": \"([^\"]+)\"");
    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private static String read(String sample, String file) throws IOException {
        return Files.readString(REPORTS.resolve(sample).resolve(file));
    }

    private static String dayTime(MatchResult found) {
        return DAY_TIME.format(OffsetDateTime.parse(found.group(2)));
    }

    /** Words of the commands that README shows, quoted ones without their quotes. */
    private static List<List<String>> commands() throws IOException {
        return Files.readString(Path.of("README.md")).lines().filter(line -> line.startsWith("java -jar target/crumbclock.jar "))
                .map(line -> Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line).results()
                        .map(word -> word.group(1) == null ? word.group(2) : word.group(1)).skip(3).toList()).toList();
    }

    private static List<String> command(String name, String about) throws IOException {
        return commands().stream().filter(words -> words.get(0).equals(name) && words.contains(about)).findFirst().orElseThrow();
    }

    @Test
    void should_show_commands_that_name_files_which_are_there() throws IOException {
        assertThat(commands()).hasSizeGreaterThan(4).allSatisfy(words -> {
            for (int word = 1; word < words.size(); word++) {
                if (words.get(word).contains("/") && !words.get(word - 1).equals("--out")) {
                    assertThat(Path.of(words.get(word))).isRegularFile();
                }
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {WHAT_IF + "/compare.html", PROMISE + "/promise.html", DAY + "/plan.html"})
    void should_lead_to_pages_that_are_kept(String page) throws IOException {
        Path file = REPORTS.resolve(page);

        assertThat(Pattern.compile("href=\"([^\"#]+)\"").matcher(Files.readString(file)).results().map(link -> link.group(1)).toList())
                .allSatisfy(link -> assertThat(file.resolveSibling(link)).exists());
    }

    @ParameterizedTest
    @ValueSource(strings = {WHAT_IF + "/compare.json", PROMISE + "/promise.json"})
    void should_keep_a_page_for_each_plan_in_the_table(String table) throws IOException {
        Path file = REPORTS.resolve(table);

        assertThat(FolderNames.of(Files.readString(file))).hasSizeGreaterThan(3)
                .allSatisfy(plan -> assertThat(file.resolveSibling(plan).resolve("plan.html")).isRegularFile());
    }

    @Test
    void should_tell_each_promised_time_on_the_page_as_in_its_table() throws IOException {
        String page = read(PROMISE, "promise.html");

        assertThat(AT.matcher(read(PROMISE, "promise.json")).results().map(SamplePagesTest::dayTime).distinct().toList())
                .hasSizeGreaterThan(1).allSatisfy(time -> assertThat(page).contains(time));
    }

    /** Each plan hands the new order over when the promise says so. */
    @Test
    void should_hand_over_in_each_plan_when_it_is_promised() throws IOException {
        String table = read(PROMISE, "promise.json");
        List<String> told = new ArrayList<>();
        Pattern.compile("\"plan\": \"([a-z0-9-]+)\",\\s+\"ready\".*?\"handOverAt\": \"([^\"]+)\"", Pattern.DOTALL).matcher(table).results()
                .forEach(plan -> told.add(plan.group(1) + "/" + dayTime(plan)));

        assertThat(told).hasSizeGreaterThan(4).allSatisfy(one -> assertThat(read(PROMISE, one.substring(0, one.indexOf('/')) + "/plan.html"))
                .contains(one.substring(one.indexOf('/') + 1)));
    }

    /** Every figure of the one table stands in the other. */
    @Test
    void should_tell_the_same_figures_in_both_tables_of_the_comparison() throws IOException {
        String json = read(WHAT_IF, "compare.json");
        List<String> cells = Pattern.compile("\"value\": (-?[0-9]+)").matcher(json).results().map(cell -> cell.group(1)).toList();
        String csv = read(WHAT_IF, "compare.csv");

        assertThat(cells).hasSizeGreaterThan(100).allSatisfy(cell -> assertThat(csv).contains("," + cell + ","));
        assertThat(csv.lines().skip(1).filter(line -> line.matches("[^,]+,[^,]+,.*"))).hasSizeGreaterThanOrEqualTo(cells.size());
    }

    @Test
    void should_write_the_kept_day_byte_for_byte(@TempDir Path folder) throws IOException {
        assertSame(DAY, folder, command("replan", "problems/charity-day.json"));
    }

    @Test
    @Tag("slow")
    void should_write_the_kept_promise_byte_for_byte(@TempDir Path folder) throws IOException {
        assertSame(PROMISE, folder, command("promise", "problems/late-order.json"));
    }

    @Test
    @Tag("slow")
    void should_write_the_kept_comparison_byte_for_byte(@TempDir Path folder) throws IOException {
        List<String> words = new ArrayList<>(List.of("compare", "problems/five-due-saturday.json"));
        FolderNames.of(read(WHAT_IF, "compare.json")).stream().filter(plan -> !plan.equals("base"))
                .forEach(plan -> words.add("problems/changes/five-due-saturday/" + plan + ".json"));

        assertSame(WHAT_IF, folder, words);
    }

    private static void assertSame(String sample, Path folder, List<String> command) throws IOException {
        List<Object> words = new ArrayList<>(command);
        int out = words.indexOf("--out");
        if (out >= 0) {
            words.subList(out, out + 2).clear();
        }
        words.addAll(List.of("--out", folder.resolve("out"), "--quiet"));

        CommandRun run = CommandRun.of(words.toArray());

        assertThat(run.code()).as(run.err()).isBetween(0, 1);
        Path kept = REPORTS.resolve(sample);
        try (Stream<Path> files = Files.walk(kept)) {
            assertThat(files.filter(Files::isRegularFile)).hasSizeGreaterThan(3)
                    .allSatisfy(file -> assertThat(folder.resolve("out").resolve(kept.relativize(file))).hasSameBinaryContentAs(file));
        }
    }
}
