package crumbclock.problems;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.problem.Problem;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.change.ChangeReader;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files of changes that ship with the problems: each fits its problem and changes it. */
class ShippedChangesTest {

    private static final Path CHANGES = ShippedProblem.FOLDER.resolve("changes");

    static Stream<Path> files() {
        try (Stream<Path> all = Files.walk(CHANGES)) {
            return all.filter(Files::isRegularFile).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void each_file_fits_its_problem_and_changes_it(Path file) {
        var base = ShippedProblem.read(file.getParent().getFileName() + ".json").problem();

        assertThat(changed(file)).usingRecursiveComparison().ignoringFields("title").isNotEqualTo(base);
    }

    @Test
    void each_problem_has_some() {
        assertThat(files().map(file -> file.getParent().getFileName().toString()).distinct().sorted()).containsExactly("charity-day",
                "five-due-saturday", "free-from", "late-order", "not-possible", "small-fridge");
    }

    /** What is said of the layers from home: they are not baked, nothing of them is mixed, and who may not eat egg still gets none. */
    @Test
    void layers_from_home_leave_oven_and_batter_alone() {
        Problem problem = changed(CHANGES.resolve("charity-day/layers-baked-at-home.json"));

        assertThat(problem.steps()).noneMatch(step -> step.oven().isPresent()).noneMatch(step -> step.ownerId().startsWith("batter"));
        assertThat(problem.batches()).extracting("id").containsExactly("icing-free-from", "icing-1", "icing-2", "icing-3");
        assertThat(problem.cakes().get(2).contains()).doesNotContain("egg");
        assertThat(problem.cakes().get(10).contains()).contains("egg");
    }

    private static Problem changed(Path file) {
        var log = new IssueLog();
        var draft = ProblemReader.draft(ShippedProblem.FOLDER.resolve(file.getParent().getFileName() + ".json"), List.of(), log);
        var scenario = ChangeReader.read(List.of(file.toString()), draft.orElseThrow(), log);
        assertThat(log.sorted()).isEmpty();
        return scenario.orElseThrow().problem();
    }
}
