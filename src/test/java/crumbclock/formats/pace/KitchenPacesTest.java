package crumbclock.formats.pace;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.pace.KitchenPaces.Edited;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only the figures change; every other letter of the file stays. */
class KitchenPacesTest {

    @TempDir
    private Path folder;

    private KitchenPaces kitchen(String text) throws IOException {
        Files.writeString(folder.resolve("kitchen.json"), text);
        Path problem = Files.writeString(folder.resolve("problem.json"), "{ \"title\": \"x\", \"kitchen\": \"kitchen.json\" }");
        var log = new IssueLog();
        var kitchen = KitchenPaces.of(problem, log);
        assertThat(log.sorted()).isEmpty();
        return kitchen.orElseThrow();
    }

    private static Map<String, Map<String, Double>> ada(Object... kindsAndPaces) {
        Map<String, Double> paces = new LinkedHashMap<>();
        for (int i = 0; i < kindsAndPaces.length; i += 2) {
            paces.put((String) kindsAndPaces[i], (Double) kindsAndPaces[i + 1]);
        }
        return Map.of("ada", paces);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{ 'id': 'ada', 'pace': { 'mixing': 1.30, 'piping':2 } }   | { 'id': 'ada', 'pace': { 'mixing': 1.25, 'piping':2 } }",
        "{ 'id': 'ada', 'pace': { 'piping':2 } }                   | { 'id': 'ada', 'pace': { 'piping':2, 'mixing': 1.25 } }",
        "{'id':'ada','pace':{'piping':2}}                          | {'id':'ada','pace':{'piping':2, 'mixing': 1.25}}",
        "{ 'id': 'ada', 'pace': {} }                               | { 'id': 'ada', 'pace': { 'mixing': 1.25 } }",
        "{ 'id': 'ada', 'pace': { } }                              | { 'id': 'ada', 'pace': { 'mixing': 1.25 } }",
        "{ 'id': 'ada' }                                           | { 'id': 'ada', 'pace': { 'mixing': 1.25 } }",
        "{ 'pace': { 'mixing': 1e0 }, 'id': 'ada' }                | { 'pace': { 'mixing': 1.25 }, 'id': 'ada' }"})
    void should_change_the_figure_where_it_stands(String before, String after) throws IOException {
        // given: the same letters, with quotes as JSON has them
        String frame = "{ \"name\": \"ü – \\\"x\\\" \uD83C\uDF82\", \"people\": [ { \"id\": \"bob\",\t\"pace\": { \"mixing\": 3 } }, %s ] }\n";

        // when
        Edited edited = kitchen(frame.formatted(before.replace('\'', '"'))).with(ada("mixing", 1.25));

        // then
        assertThat(edited.text()).isEqualTo(frame.formatted(after.replace('\'', '"')));
        assertThat(edited.changes()).singleElement().satisfies(change -> assertThat(change.after()).isEqualByComparingTo("1.25"));
    }

    @ParameterizedTest
    @CsvSource({"lf", "crlf"})
    void should_put_new_figures_on_lines_of_their_own_where_the_others_have_one(String ends) throws IOException {
        String end = ends.equals("lf") ? "\n" : "\r\n";
        String before = """
                {
                    "people": [
                        {
                            "id": "ada",
                            "pace": {
                                "mixing": 1.3
                            }
                        },
                        {
                            "id": "bob"
                        }
                    ]
                }
                """.replace("\n", end);

        Edited edited = kitchen(before).with(Map.of("ada", ada("mixing", 1.4, "piping", 0.9, "boxing", 10.0).get("ada"),
                "bob", Map.of("mixing", 2.0)));

        assertThat(edited.text()).isEqualTo("""
                {
                    "people": [
                        {
                            "id": "ada",
                            "pace": {
                                "mixing": 1.4,
                                "piping": 0.9,
                                "boxing": 10
                            }
                        },
                        {
                            "id": "bob",
                            "pace": { "mixing": 2 }
                        }
                    ]
                }
                """.replace("\n", end));
    }

    @Test
    void should_keep_a_byte_order_mark() throws IOException {
        var kitchen = kitchen("\uFEFF{ \"people\": [{ \"id\": \"ada\", \"pace\": { \"mixing\": 1 } }] }");

        kitchen.write(kitchen.with(ada("mixing", 1.5)));

        assertThat(folder.resolve("kitchen.json")).hasContent("\uFEFF{ \"people\": [{ \"id\": \"ada\", \"pace\": { \"mixing\": 1.5 } }] }");
    }

    @Test
    void should_find_a_kitchen_inside_the_problem() throws IOException {
        String text = "{ \"title\": \"x\", \"kitchen\": { \"people\": [{ \"id\": \"ada\" }] }, \"orders\": [{ \"id\": \"ada\" }] }";
        Path problem = Files.writeString(folder.resolve("whole.json"), text);
        var kitchen = KitchenPaces.of(problem, new IssueLog()).orElseThrow();

        assertThat(kitchen.file()).isEqualTo(problem);
        assertThat(kitchen.with(ada("mixing", 1.5)).text())
                .isEqualTo(text.replaceFirst("\\{ \"id\": \"ada\" }] }", "{ \"id\": \"ada\", \"pace\": { \"mixing\": 1.5 } }] }"));
    }

    @Test
    void should_leave_the_text_alone_when_there_is_nothing_to_change() throws IOException {
        String text = "{ \"people\": [{ \"id\": \"ada\" }] }";

        assertThat(kitchen(text).with(Map.of())).isEqualTo(new Edited(text, List.of()));
        assertThat(kitchen(text).with(Map.of("zoe", Map.of("mixing", 2.0)))).isEqualTo(new Edited(text, List.of()));
    }
}
