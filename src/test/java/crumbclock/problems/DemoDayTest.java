package crumbclock.problems;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.day.DayReader;
import crumbclock.formats.day.DayTimes;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.plan.PlanJson;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The charity day on which the oven by the door dies at 11:00, with half of what was done written down. */
class DemoDayTest {

    @Test
    void should_go_on_with_one_oven() {
        var issues = new IssueLog();
        Problem problem = ProblemReader.read(Path.of("problems", "charity-day.json"), issues).orElseThrow();
        int now = DayTimes.now(problem.clock(), "11:00").orElseThrow();
        DayLog day = SourceFile.read(Path.of("demo-data", "charity-day", "day.csv"), issues)
                .flatMap(file -> DayReader.read(file, problem, now, issues)).orElseThrow(() -> new AssertionError(issues.sorted()));
        Plan plan = SourceFile.read(Path.of("demo-data", "charity-day", "known-plan.json"), issues)
                .flatMap(file -> PlanJson.read(file.name(), file.text(), problem, issues)).orElseThrow(() -> new AssertionError(issues.sorted()));

        Replanned made = Replan.replan(problem, plan, day, now, SearchLimits.ofSteps(1, 1000), SearchListener.SILENT);

        assertThat(made.plan().findings()).filteredOn(finding -> !made.news().inFact().contains(finding)).isEmpty();
        assertThat(made.plan().timetable().steps()).filteredOn(step -> step.cavityId().equals("oven-2")).allMatch(step -> step.end() <= now);
        assertThat(made.news().people()).isNotEmpty();
        long before = plan.timetable().outcomes().stream().filter(Outcome::possible).count();
        assertThat(made.plan().timetable().outcomes().stream().filter(Outcome::possible).count()).isBetween(before * 3 / 4, before);
    }
}
