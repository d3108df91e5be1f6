package crumbclock.app;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.app.PlanSideBySide.Job;
import crumbclock.engine.cost.Cost;
import crumbclock.fixture.RandomKitchens;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanSideBySideTest {

    /** Writes down what it hears, and asks to stop once so many jobs are done. */
    private static final class Heard implements PlanSideBySide.Listener {

        /** Several threads add while others look through it. */
        private final List<String> said = new CopyOnWriteArrayList<>();
        private final int stopAfter;

        Heard(int stopAfter) {
            this.stopAfter = stopAfter;
        }

        @Override
        public void began(Job job) {
            said.add("began " + job.name());
        }

        @Override
        public void improved(Job job, Cost best) {
            said.add("improved " + job.name());
        }

        @Override
        public void finished(Job job) {
            said.add("finished " + job.name());
        }

        @Override
        public boolean stopAsked() {
            return said.stream().filter(one -> one.startsWith("finished")).count() >= stopAfter;
        }
    }

    private static List<Job> jobs(int count) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            jobs.add(new Job("kitchen " + i, RandomKitchens.of(i), SearchLimits.ofSteps(1, 10)));
        }
        return jobs;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void each_plan_is_the_one_that_its_problem_gets_alone(int atOnce) {
        var jobs = jobs(3);
        var heard = new Heard(99);

        var plans = PlanSideBySide.plan(jobs, atOnce, heard);

        for (int i = 0; i < jobs.size(); i++) {
            assertThat(plans.get(i)).hasValue(PlanProblem.plan(jobs.get(i).problem(), jobs.get(i).limits(),
                    SearchListener.SILENT));
        }
        assertThat(heard.said).contains("began kitchen 1", "improved kitchen 1", "finished kitchen 3");
    }

    @Test
    void what_has_not_begun_when_it_is_ended_is_not_planned() {
        var plans = PlanSideBySide.plan(jobs(3), 1, new Heard(2));

        assertThat(plans).extracting(Optional::isPresent).containsExactly(true, true, false);
    }

    @Test
    void the_first_is_planned_whatever_is_asked() {
        var plans = PlanSideBySide.plan(jobs(2), 1, new Heard(0));

        assertThat(plans).extracting(Optional::isPresent).containsExactly(true, false);
    }
}
