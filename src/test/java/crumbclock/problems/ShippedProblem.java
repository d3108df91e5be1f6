package crumbclock.problems;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Step;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.issue.IssueLog;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;

/** A problem of the folder {@code problems}, read as a user's would be, with short ways to its parts. */
record ShippedProblem(Problem problem) {

    static final Path FOLDER = Path.of("problems");

    static ShippedProblem read(String fileName) {
        var log = new IssueLog();
        var problem = ProblemReader.read(FOLDER.resolve(fileName), log);
        assertThat(log.sorted()).as("issues of %s", fileName).isEmpty();
        return new ShippedProblem(problem.orElseThrow());
    }

    Step step(String id) {
        return problem.steps().stream().filter(step -> step.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError("no step " + id));
    }

    Footprint footprint(String stepId) {
        return step(stepId).place().orElseThrow().form().footprint();
    }

    int heightMm(String stepId) {
        return step(stepId).place().orElseThrow().form().heightMm();
    }

    Store store(String id) {
        return problem.kitchen().stores().stream().filter(store -> store.id().equals(id)).findFirst().orElseThrow();
    }

    Shelf shelf(String storeId, String shelfId) {
        return store(storeId).shelves().stream().filter(shelf -> shelf.id().equals(shelfId)).findFirst().orElseThrow();
    }

    Pool pool(String id) {
        return problem.kitchen().pools().stream().filter(pool -> pool.id().equals(id)).findFirst().orElseThrow();
    }

    /** @param local date and time without zone, such as 2026-06-06T10:00 */
    int minute(String local) {
        return (int) Duration.between(problem.clock().start(), LocalDateTime.parse(local).atZone(problem.clock().zone()))
                .toMinutes();
    }
}
