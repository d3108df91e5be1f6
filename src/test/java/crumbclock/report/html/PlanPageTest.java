package crumbclock.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PlanPageTest {

    @Test
    void writes_for_looking() throws Exception {
        var dir = System.getProperty("page.dir");
        org.junit.jupiter.api.Assumptions.assumeTrue(dir != null);
        Files.writeString(Path.of(dir, "plan.html"), PlanPage.render(ReportFixture.problem(), ReportPlans.sound()));
        Files.writeString(Path.of(dir, "bad.html"), PlanPage.render(ReportFixture.problem(), ReportPlans.unsound()));
        assertThat(Path.of(dir, "plan.html")).exists();
    }
}
