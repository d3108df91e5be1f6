package crumbclock.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Spoils the example at random: whatever stands in the files, reading ends with a problem or with issues, never with an exception. */
class MutatedFilesTest {

    private static final int ROUNDS = 150;
    private static final Pattern TOKEN = Pattern.compile("\"(?:[^\"\\\\\\r\\n]|\\\\.)*\"|[A-Za-z0-9_.-]+|\\s+|.", Pattern.DOTALL);
    private static final List<String> FOREIGN = List.of("", "null", "true", "-1", "0", "1e99", "1E-99", "9999999999999999999", "0.5", "\"\"", "\"x\"", "[]", "{}",
            "\"25:10\"", "\"9999-12-31T23:59\"", "\"0000-01-01 00:00\"", "\"Sat 10:00\"", "\"8 in\"", "\"-8 in\"", "\"1e9 in\"", "\"00:00-00:00\"", "\"\\u0000\"",
            "\"..\"", "\"/\"", "\"kitchen.json\"", "\"problem.json\"", ",", "\n", "\"", "=", "+", "🎂");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void should_never_end_in_an_exception(long seed) throws IOException {
        var random = new Random(seed);
        int sound = 0;
        for (int round = 0; round < ROUNDS; round++) {
            var example = new TestProblem(folder);
            String file = TestProblem.FILES.get(random.nextInt(TestProblem.FILES.size()));
            String mutated = mutate(TestProblem.example(file), random);
            example.whole(file, mutated);
            var log = new IssueLog();
            assertThatCode(() -> assertThat(example.read(log).isPresent()).isEqualTo(log.isEmpty()))
                    .as("seed %d, round %d, %s:%n%s", seed, round, file, mutated).doesNotThrowAnyException();
            sound += log.isEmpty() ? 1 : 0;
        }
        assertThat(sound).as("some changes do no harm, most do").isBetween(1, ROUNDS / 2);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void should_never_end_in_an_exception_over_a_method_file(long seed) throws IOException {
        var random = new Random(seed);
        String methods;
        try (var stream = getClass().getResourceAsStream("/crumbclock/methods/small-cakes.json")) {
            methods = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (int round = 0; round < ROUNDS; round++) {
            String mutated = mutate(methods, random);
            var example = new TestProblem(folder).with("problem.json", "\"zone\"", "\"methods\": [\"mine.json\"], \"zone\"")
                    .whole("mine.json", mutated);
            var log = new IssueLog();
            assertThatCode(() -> assertThat(example.read(log).isPresent()).isEqualTo(log.isEmpty()))
                    .as("seed %d, round %d:%n%s", seed, round, mutated).doesNotThrowAnyException();
        }
    }

    private static String mutate(String text, Random random) {
        List<String> tokens = new ArrayList<>();
        var matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(tokens.size());
            switch (random.nextInt(4)) {
                case 0 -> tokens.remove(at);
                case 1 -> tokens.add(at, tokens.get(at));
                case 2 -> tokens.set(at, FOREIGN.get(random.nextInt(FOREIGN.size())));
                default -> tokens.set(at, tokens.get(random.nextInt(tokens.size())));
            }
        }
        return String.join("", tokens);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "\"\"", "null", "{\"orders\":{}}", "\u0000", "a,b\n\"", "{\"title\":{\"a\":[[[]]]}}"})
    void should_take_rubbish_for_any_file(String rubbish) throws IOException {
        for (String file : TestProblem.FILES) {
            Path own = Files.createDirectories(folder.resolve(file + ".d"));
            var log = new IssueLog();
            assertThat(new TestProblem(own).whole(file, rubbish).read(log)).isEmpty();
            assertThat(log.sorted()).isNotEmpty();
        }
    }
}
