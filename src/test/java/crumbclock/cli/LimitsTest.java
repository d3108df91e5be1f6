package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of things and numbers in files at and beyond what the program can work with: a fault with its place, never a failure. */
class LimitsTest {

    private static final String METHOD = """
            { "format": "crumbclock-methods-1", "methods": [{ "id": "own", "title": "Own", "sections": [{ "id": "s", "steps": [
              { "id": "mix", "name": "mix", "source": "test", "work": { "minutes": { "any": 5 }, "times": "PIECES" } },
              { "id": "bake", "name": "bake", "source": "test", "waitBefore": { "mostMinutes": 30 },
                "rest": { "leastMinutes": { "any": 30 }, "mostMinutes": { "any": 35 },
                          "oven": { "temperatureC": { "any": 180 }, "coolInOvenMinutes": 0, "pan": { "widthMm": 200, "depthMm": 200, "heightMm": 50 } } } },
              { "id": "chill", "name": "chill", "source": "test", "rest": { "leastMinutes": { "any": 5 } },
                "place": { "allowed": ["FRIDGE"], "form": { "name": "cake", "shape": "LIKE_TIER", "plusMm": 10, "plusHeightMm": 60, "gramsPerLitre": 500 } } },
              { "id": "box", "name": "box", "source": "test", "work": { "minutes": { "any": 5 }, "people": 1 } }] }], "finishStep": "box" }] }
            """;

    @TempDir
    private Path folder;

    private CommandRun run(String command, String cake, String method) throws IOException {
        SmallProblem.in(folder);
        String problem = Files.readString(folder.resolve("two-dozen.json"));
        Files.writeString(folder.resolve("own.json"), method);
        Files.writeString(folder.resolve("two-dozen.json"), problem.replace("\"orders\": \"orders.csv\"", "\"methods\": [\"own.json\"],\n"
                + "  \"orders\": [{ \"id\": \"A1\", \"handOver\": \"Fri 18:00\", \"way\": \"set aside\", \"cakes\": [" + cake + "] }]"));
        return command.equals("check") ? CommandRun.of("check", folder.resolve("two-dozen.json"))
                : CommandRun.of("plan", folder.resolve("two-dozen.json"), "--steps", 5, "--quiet", "--out", folder.resolve("out"));
    }

    private CommandRun own(String old, String replacement) throws IOException {
        assertThat(METHOD).contains(old);
        return run("plan", "{ \"method\": \"own\", \"size\": \"150 mm\", \"layers\": 2, \"servings\": 10 }", METHOD.replace(old, replacement));
    }

    private static String cupcakes(int allergens) {
        String names = IntStream.range(0, allergens).mapToObj(number -> "\"a" + number + "\"").collect(Collectors.joining(", "));
        return "{ \"method\": \"cupcakes-swirl\", \"size\": \"70 mm\", \"pieces\": 24, \"servings\": 24, \"contains\": [" + names + "] }";
    }

    /** The method brings egg, milk and wheat. */
    @Test
    void should_tell_apart_sixty_four_allergens() throws IOException {
        assertThat(run("plan", cupcakes(61), METHOD).code()).isZero();
    }

    @Test
    void should_refuse_more_allergens_with_their_place() throws IOException {
        CommandRun refused = run("check", cupcakes(62), METHOD);

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.errIn(folder)).matches("two-dozen.json, line 17, /orders/0/cakes/0/method: read 65 different allergens so far, \"[a-z0-9]+\" among them; "
                + "expected at most 64 in one problem, shelves counted. Call several that belong together by one name.\n1 fault.*\n");
    }

    /** The same where a change brings them: nothing is planned. */
    @Test
    void should_refuse_a_change_that_brings_too_many_allergens() throws IOException {
        run("check", cupcakes(61), METHOD);

        CommandRun refused = CommandRun.of("plan", folder.resolve("two-dozen.json"), "--change", "edit A1 freeFrom=fish", "--out", folder.resolve("out"));

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("65 different allergens", "expected at most 64 in one problem");
    }

    @ParameterizedTest
    @ValueSource(strings = {"100001", "2147483647"})
    void should_refuse_what_no_method_can_mean(String number) throws IOException {
        for (String key : new String[] {"\"any\": 5", "\"any\": 30", "\"any\": 180", "\"mostMinutes\": 30", "\"coolInOvenMinutes\": 0", "\"widthMm\": 200",
            "\"plusMm\": 10", "\"plusHeightMm\": 60", "\"people\": 1"}) {
            CommandRun refused = own(key, key.replaceAll("[0-9]+$", number));

            assertThat(refused.code()).as(key).isEqualTo(2);
            assertThat(refused.errIn(folder)).as(key).matches("(?s)own.json, line \\d+, /methods/0/.*: read " + number + "; expected at most 100(000)?\\..*");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"coolInOvenMinutes\": 0| \"coolInOvenMinutes\": 31| step bake: cools in the oven for 31 of 30 minutes; expected no longer than its least rest",
        "\"plusMm\": 10| \"plusMm\": -150| step chill: comes to a form of 0 × 0 mm; expected at least 1 mm each way",
        "\"any\": 5 }, \"times\"| \"any\": 100000 }, \"times\"| step mix: comes to 1,000,000 minutes; expected at most 100,000"})
    void should_refuse_what_comes_to_too_much_for_this_cake(String old, String replacement, String said) throws IOException {
        CommandRun refused = run("plan", "{ \"method\": \"own\", \"size\": \"150 mm\", \"layers\": 2, \"pieces\": 10, \"servings\": 10 }", METHOD.replace(old, replacement));

        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.errIn(folder)).startsWith("two-dozen.json, line 17, /orders/0/cakes/0/method: read method own, " + said);
    }

    @Test
    void should_plan_at_the_very_limits() throws IOException {
        assertPlans("\"coolInOvenMinutes\": 0", "\"coolInOvenMinutes\": 30", 0);
        assertPlans("\"plusMm\": 10", "\"plusMm\": -149", 0);
        assertPlans("\"people\": 1", "\"people\": 100", 1);
        assertPlans("\"any\": 30", "\"any\": 100000", 1);
        assertPlans("\"widthMm\": 200", "\"widthMm\": 100000", 1);
    }

    private void assertPlans(String old, String replacement, int code) throws IOException {
        CommandRun planned = own(old, replacement);
        assertThat(planned.code()).as(replacement + ": " + planned.err()).isEqualTo(code);
    }

    /** No piece of equipment holds it: an order that cannot be made, and not a plan that breaks R06. */
    @Test
    void should_not_put_more_into_a_mixer_than_it_holds() throws IOException {
        Path problem = SmallProblem.in(folder);
        Files.writeString(problem, Files.readString(problem).replace("4.8 L", "1 L"));

        CommandRun planned = CommandRun.of("plan", problem, "--steps", 5, "--out", folder.resolve("out"));

        assertThat(planned.code()).as(planned.err()).isEqualTo(1);
        assertThat(planned.out()).contains("Sound: the audit found no broken rule.", "R06 equipment and surfaces: even alone in the kitchen there is too little equipment");
    }

    /** As often as it is said, work takes no longer than any problem lasts. */
    @Test
    void should_stay_within_limits_when_changes_add_up() throws IOException {
        Path changes = Files.writeString(folder.resolve("slow.json"), "{ \"title\": \"Slow\", \"changes\": [" + String.join(", ",
                java.util.Collections.nCopies(12, "{ \"time\": \"*\", \"percent\": 1000 }")) + "] }");

        CommandRun planned = CommandRun.of("plan", SmallProblem.in(folder), "--change", changes, "--steps", 5, "--quiet", "--out", folder.resolve("out"));

        assertThat(planned.code()).as(planned.err()).isEqualTo(1);
    }
}
