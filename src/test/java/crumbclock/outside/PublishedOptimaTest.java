package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planner reaches optima that were proven elsewhere; instances and sources are told in the README beside them. */
class PublishedOptimaTest {

    private static final long SEED = 1;
    /** The unit of time has no length in these papers; with ten minutes, makespans are as long as a kitchen's day or week. */
    private static final int UNIT = 10;

    /** Fisher and Thompson 1963, Lawrence 1984: pools of one piece. */
    @ParameterizedTest
    @CsvSource({"ft06.jss, 55, 20000", "la01.jss, 666, 40000"})
    void should_reach_the_optimum_of_a_job_shop(String file, int optimum, long steps) {
        assertOptimum(PublishedFiles.jobShop(file, PublishedFiles.resource(file)), optimum, steps);
    }

    /** PSPLIB, Kolisch and Sprecher 1996, list j30opt: pools of many pieces; all three optima lie above the critical path. */
    @ParameterizedTest
    @CsvSource({"j301_1.sm, 43, 5000", "j301_4.sm, 62, 10000", "j309_1.sm, 83, 20000"})
    void should_reach_the_optimum_of_a_project(String file, int optimum, long steps) {
        assertOptimum(PublishedFiles.project(file, PublishedFiles.resource(file)), optimum, steps);
    }

    /** ProGen/max, Schwindt 1998, UBO10: waits with a least and a most. */
    @ParameterizedTest
    @CsvSource({"sm_j10_PSP1.SCH, 26, 5000", "ubo10_psp2.sch, 45, 5000"})
    void should_reach_the_optimum_of_a_project_with_maximum_lags(String file, int optimum, long steps) {
        assertOptimum(PublishedFiles.projectWithLags(file, PublishedFiles.resource(file)), optimum, steps);
    }

    private static void assertOptimum(Network network, int optimum, long steps) {
        var plan = Searched.of(PublishedProblems.of(network.inMinutes(UNIT)), SEED, steps).assertSound();

        assertThat(plan.end(PublishedProblems.LAST)).as("makespan of %s", network.name()).isEqualTo(UNIT * optimum);
        assertThat(plan.audit().mediumCost()).isZero();
        assertThat(plan.audit().softCost()).isEqualTo((long) UNIT * optimum);
    }
}
