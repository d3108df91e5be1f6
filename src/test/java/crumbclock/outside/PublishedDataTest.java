package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole published sets, where they are at hand: in {@code ../shared/data} beside the project, or in the folder that the system
 * property {@code crumbclock.data} names. Skipped otherwise.
 */
class PublishedDataTest {

    private static final Path DATA = Path.of(System.getProperty("crumbclock.data", "../shared/data"));

    /** Optima and lower bounds: Fisher and Thompson 1963, Lawrence 1984. */
    @ParameterizedTest
    @CsvSource({"ft06, 6, 6, 55", "la01, 10, 5, 666", "la02, 10, 5, 655", "la03, 10, 5, 597", "la04, 10, 5, 590",
            "la05, 10, 5, 593"})
    void should_read_job_shops_as_their_list_has_them(String name, int jobs, int machines, int optimum) {
        Path folder = folder("jobshop");
        var network = PublishedFiles.jobShop(name, PublishedFiles.text(folder.resolve(name + ".jss")));
        var row = rows(folder.resolve("reference.csv")).stream().filter(cells -> cells[0].equals(name)).findFirst();

        assertThat(network.size()).isEqualTo(jobs * machines + 1);
        assertThat(row.orElseThrow()).contains(Integer.toString(optimum));
        assertThat(earliestEnd(PublishedProblems.of(network))).as("longest job").isEqualTo(Integer.parseInt(row.get()[4]));
        assertThat(busiest(network)).as("busiest machine").isEqualTo(Integer.parseInt(row.get()[5]));
    }

    private static int busiest(Network network) {
        int[] load = new int[network.capacities().length];
        for (int activity = 0; activity < network.size(); activity++) {
            for (int machine = 0; machine < load.length; machine++) {
                load[machine] += network.demands()[activity][machine] * network.durations()[activity];
            }
        }
        return Arrays.stream(load).max().orElseThrow();
    }

    /** PSPLIB: the critical path is the {@code MPM-Time} of each file, computed anew in the list. */
    @Test
    void should_find_the_critical_path_of_every_project() {
        Path folder = folder("psplib");
        var rows = rows(folder.resolve("reference.csv")).stream().filter(cells -> cells[0].startsWith("j30")).toList();

        assertThat(rows).hasSize(480);
        for (String[] row : rows) {
            assertThat(earliestEnd(PublishedProblems.of(project(folder, row[0])))).as("critical path of %s", row[0])
                    .isEqualTo(Integer.parseInt(row[1]));
        }
    }

    /** The same with maximum lags: "network-based lower bound on project duration" of the generator's STAT file. */
    @Test
    void should_find_the_longest_path_through_minimum_and_maximum_lags() {
        Path folder = folder("rcpspmax").resolve("sm_j10");
        var rows = rows(folder.resolve("bounds.csv"));

        assertThat(rows).hasSize(270);
        for (String[] row : rows) {
            assertThat(earliestEnd(PublishedProblems.of(lags(folder, row[0])))).as("longest path of %s", row[0])
                    .isEqualTo(Integer.parseInt(row[1]));
        }
    }

    /** Infeasible by the repository's list and by a proof with another solver: a plan would be an error of the audit. */
    @Test
    void should_never_solve_what_has_no_solution() {
        Path folder = folder("rcpspmax").resolve("sm_j10");
        var infeasible = rows(folder.resolve("bounds.csv")).stream().filter(cells -> cells[4].equals("infeasible"))
                .limit(10).toList();

        assertThat(infeasible).hasSize(10);
        for (String[] row : infeasible) {
            var plan = Searched.of(PublishedProblems.of(lags(folder, row[0])), 1, 500);

            assertThat(plan.isPossible() && plan.audit().isSound()).as("%s is solved", row[0]).isFalse();
        }
    }

    /** Optima by the repository's list and by a proof with another solver. */
    @Test
    void should_plan_what_has_a_solution() {
        Path folder = folder("rcpspmax").resolve("sm_j10");
        var feasible = rows(folder.resolve("bounds.csv")).stream().filter(cells -> cells[4].equals("optimal"))
                .limit(10).toList();

        assertThat(feasible).hasSize(10);
        for (String[] row : feasible) {
            var plan = Searched.of(PublishedProblems.of(lags(folder, row[0])), 1, 500).assertSound();

            assertThat(plan.audit().softCost()).as("makespan of %s, optimum below", row[0])
                    .isGreaterThanOrEqualTo(Integer.parseInt(row[2]));
        }
    }

    /**
     * All of j30 with some 5,000 schedules in each of the two directions, of which the backward one is of no use here. The
     * bar is our own; for comparison, L. Wang, C. Fang, Expert Systems with Applications 39 (2012), come to a mean of
     * 0.14 % above the optimum with 5,000 schedules.
     */
    @Test
    @Tag("slow")
    void should_come_close_to_the_optima_of_all_projects() {
        Path folder = folder("psplib");
        var rows = rows(folder.resolve("reference.csv")).stream().filter(cells -> cells[0].startsWith("j30")).toList();
        double sum = 0;
        for (String[] row : rows) {
            var plan = Searched.of(PublishedProblems.of(project(folder, row[0]).inMinutes(60)), 1, 5000).assertSound();
            int optimum = 60 * Integer.parseInt(row[4]);
            assertThat(plan.audit().softCost()).as("makespan of %s, optimum below", row[0]).isGreaterThanOrEqualTo(optimum);
            sum += 100.0 * (plan.audit().softCost() - optimum) / optimum;
        }
        assertThat(sum / rows.size()).as("mean gap in %%").isBetween(0.0, 0.30);
    }

    /** Earliest minute at which the last step can end when nothing is scarce, by the engine's bounds. */
    private static int earliestEnd(Problem problem) {
        for (var task : CompiledProblem.of(problem, false).tasks) {
            if (task.step.id().equals(PublishedProblems.LAST)) {
                return task.earliestStart;
            }
        }
        throw new AssertionError("no last step");
    }

    private static Network project(Path folder, String file) {
        return PublishedFiles.project(file, PublishedFiles.text(folder.resolve("j30").resolve(file)));
    }

    private static Network lags(Path folder, String file) {
        return PublishedFiles.projectWithLags(file, PublishedFiles.text(folder.resolve(file)));
    }

    private static Path folder(String name) {
        Path folder = DATA.resolve(name);
        assumeTrue(Files.isDirectory(folder), () -> "no published set at " + folder);
        return folder;
    }

    /** Cells of all lines but the title. */
    private static List<String[]> rows(Path csv) {
        return PublishedFiles.text(csv).lines().skip(1).map(line -> line.split(",", -1)).toList();
    }
}
