package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crumbclock.bound.Bound;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bound against published optima and critical paths. Whole sets are read from {@code ../shared/data} beside the
 * project, or from the folder that the system property {@code crumbclock.data} names; skipped where there is none.
 */
class BoundPublishedTest {

    private static final Path DATA = Path.of(System.getProperty("crumbclock.data", "../shared/data"));

    /** Fisher and Thompson 1963, Lawrence 1984: optimum, and the longest job or busiest machine that the bound is not below. */
    @ParameterizedTest
    @CsvSource({"ft06.jss, 47, 55", "la01.jss, 666, 666"})
    void should_lie_between_the_simple_bounds_and_the_optimum_of_a_job_shop(String file, int simple, int optimum) {
        var problem = PublishedProblems.of(PublishedFiles.jobShop(file, PublishedFiles.resource(file)));

        assertThat(Bound.of(problem).endMinute()).isBetween(simple, optimum);
    }

    /** With nothing scarce: PSPLIB's {@code MPM-Time}, the critical path, of all 480 projects, and with it the optimum from below. */
    @Test
    void should_be_the_critical_path_and_no_more_than_the_optimum_of_every_project() {
        Path folder = folder("psplib");
        var rows = rows(folder.resolve("reference.csv")).stream().filter(cells -> cells[0].startsWith("j30")).toList();
        assertThat(rows).hasSize(480);
        double gaps = 0;
        int reached = 0;
        for (String[] row : rows) {
            var network = PublishedFiles.project(row[0], PublishedFiles.text(folder.resolve("j30").resolve(row[0])));
            int optimum = Integer.parseInt(row[4]);

            int bound = Bound.of(PublishedProblems.of(network)).endMinute();

            assertThat(Bound.of(PublishedProblems.of(plenty(network))).endMinute()).as("critical path of %s", row[0])
                    .isEqualTo(Integer.parseInt(row[1]));
            assertThat(bound).as("bound of %s", row[0]).isBetween(Integer.parseInt(row[1]), optimum);
            gaps += 100.0 * (optimum - bound) / optimum;
            reached += bound == optimum ? 1 : 0;
        }
        // measured: 5.35 % and 240; the critical path alone is 9.21 % below
        assertThat(gaps / rows.size()).as("mean gap in %%").isBetween(0.0, 5.5);
        assertThat(reached).as("optima reached").isGreaterThanOrEqualTo(240);
    }

    /** "Network-based lower bound on project duration" of the generator's STAT file, with nothing scarce; and the optimum from below. */
    @Test
    void should_be_the_longest_path_through_minimum_and_maximum_lags() {
        Path folder = folder("rcpspmax").resolve("sm_j10");
        var rows = rows(folder.resolve("bounds.csv"));
        assertThat(rows).hasSize(270);
        for (String[] row : rows) {
            var network = PublishedFiles.projectWithLags(row[0], PublishedFiles.text(folder.resolve(row[0])));
            boolean solved = row[4].equals("optimal");

            var bound = Bound.of(PublishedProblems.of(network));

            assertThat(Bound.of(PublishedProblems.of(plenty(network))).endMinute()).as("longest path of %s", row[0])
                    .isEqualTo(Integer.parseInt(row[1]));
            if (solved) {
                assertThat(bound.allPossible()).as("%s can be done", row[0]).isTrue();
                assertThat(bound.endMinute()).as("bound of %s", row[0]).isLessThanOrEqualTo(Integer.parseInt(row[3]));
            }
        }
    }

    /** Small kitchens' worth of work in well under the time that anybody waits for; the largest projects that are at hand. */
    @Test
    void should_be_no_more_than_the_best_known_of_larger_projects() {
        Path folder = folder("psplib");
        for (String set : List.of("j60", "j120")) {
            var rows = rows(folder.resolve("reference.csv")).stream()
                    .filter(cells -> cells[0].startsWith(set) && cells[0].endsWith("_1.sm")).toList();
            assertThat(rows).isNotEmpty();
            for (String[] row : rows) {
                var network = PublishedFiles.project(row[0], PublishedFiles.text(folder.resolve(set).resolve(row[0])));

                assertThat(Bound.of(PublishedProblems.of(network)).endMinute()).as("bound of %s", row[0])
                        .isBetween(Integer.parseInt(row[1]), Integer.parseInt(row[4]));
            }
        }
    }

    /** The same project with more of everything than it can use. */
    private static Network plenty(Network network) {
        int[] capacities = new int[network.capacities().length];
        for (int[] demand : network.demands()) {
            for (int resource = 0; resource < capacities.length; resource++) {
                capacities[resource] += demand[resource];
            }
        }
        return new Network(network.name(), network.durations(), network.demands(), capacities, network.lags());
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
