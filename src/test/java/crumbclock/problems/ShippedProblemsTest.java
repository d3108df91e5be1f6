package crumbclock.problems;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShippedProblemsTest {

    /** Orders, cakes and people as problems/README.md tells them. */
    @ParameterizedTest
    @CsvSource({
            "five-due-saturday.json, 5, 5, 2, 0",
            "charity-day.json, 32, 32, 8, 9",
            "late-order.json, 6, 7, 3, 0",
            "free-from.json, 5, 5, 2, 0",
            "small-fridge.json, 5, 5, 1, 0",
            "not-possible.json, 3, 3, 1, 0"})
    void should_read_every_problem_without_an_issue(String file, int orders, int cakes, int people, int batches) {
        var problem = ShippedProblem.read(file).problem();

        assertThat(problem.orders()).hasSize(orders);
        assertThat(problem.cakes()).hasSize(cakes);
        assertThat(problem.kitchen().people()).hasSize(people);
        assertThat(problem.batches()).hasSize(batches);
    }

    @Test
    void should_hold_no_problem_that_is_not_tested() throws IOException {
        try (var files = Files.list(ShippedProblem.FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".json")))
                    .containsExactlyInAnyOrder("five-due-saturday.json", "charity-day.json", "late-order.json",
                            "free-from.json", "small-fridge.json", "not-possible.json");
        }
    }

    /** A step that nobody could ever do would make its order impossible for a dull reason. */
    @ParameterizedTest
    @ValueSource(strings = {"five-due-saturday.json", "charity-day.json", "late-order.json", "free-from.json",
            "small-fridge.json", "not-possible.json"})
    void should_have_hands_and_equipment_for_every_step(String file) {
        var shipped = ShippedProblem.read(file);
        var working = shipped.problem().kitchen().people().stream().filter(person -> person.mostMinutesADay() > 0).toList();

        for (Step step : shipped.problem().steps()) {
            Optional<HandsOn> work = step.handsOn();
            if (work.isPresent()) {
                assertThat(working.stream().filter(person -> person.hasSkill(work.get().skill())).count())
                        .as("people for %s", step.id()).isGreaterThanOrEqualTo(work.get().people());
            }
            for (var need : step.equipment()) {
                var pool = shipped.pool(need.poolId());
                assertThat(need.units()).as("pieces of %s for %s", pool.id(), step.id()).isLessThanOrEqualTo(pool.count());
                assertThat(need.amount()).as("amount in %s for %s", pool.id(), step.id()).isLessThanOrEqualTo(pool.capacity());
            }
        }
    }

    @Test
    void should_read_the_late_order_beside_the_others() {
        var log = new IssueLog();

        var problem = ProblemReader.read(ShippedProblem.FOLDER.resolve("late-order.json"),
                List.of(Path.of("demo-data", "late-order", "late-order.csv")), log);

        assertThat(log.sorted()).isEmpty();
        assertThat(problem.orElseThrow().orders()).extracting(order -> order.id())
                .containsExactly("C1", "C2", "C3", "C4", "C5", "C6", "C7");
        // Friday 18:20 is nine hours and twenty minutes after the start
        assertThat(problem.get().steps()).filteredOn(step -> step.ownerId().equals("C7"))
                .allSatisfy(step -> assertThat(step.earliest()).isEqualTo(9 * 60 + 20));
    }
}
