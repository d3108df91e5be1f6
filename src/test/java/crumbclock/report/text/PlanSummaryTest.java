package crumbclock.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.report.Golden;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanSummaryTest {

    @Test
    void tells_orders_hands_shelf_and_cost() {
        Golden.assertSame("summary.txt", PlanSummary.render(ReportFixture.problem(), ReportPlans.sound()));
    }

    @Test
    void tells_findings_first() {
        Golden.assertSame("summary-not-sound.txt",
                PlanSummary.render(ReportFixture.problem(), ReportPlans.unsound()));
    }

    @Test
    void stays_short_with_many_orders_and_keeps_the_late_ones() {
        var problem = ReportFixture.problem();
        List<Order> orders = new ArrayList<>();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            orders.add(new Order("C" + i, "hall cake " + i, List.of(), problem.orders().get(0).handOver(), 1, 0));
            outcomes.add(new Outcome("C" + i, true, 900, 960, 60, i == 60 ? 7 : 0, List.of(), List.of()));
        }
        var many = new Problem(problem.title(), problem.clock(), problem.kitchen(), orders, List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), problem.weights());
        var plan = new Plan("many", new Timetable(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                outcomes), List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1));

        String text = PlanSummary.render(many, plan);

        assertThat(text.lines()).hasSizeLessThanOrEqualTo(40);
        assertThat(text).contains("C60").contains("LATE 7 min").contains("and 48 more, all on time");
    }

    @Test
    void a_title_cannot_steer_the_terminal() {
        var problem = ReportFixture.problem();
        var named = new Problem("red \u001b[31m title\r\n", problem.clock(), problem.kitchen(), problem.orders(),
                problem.batches(), problem.steps(), problem.waits(), List.of(), List.of(), List.of(), List.of(),
                problem.weights());

        assertThat(PlanSummary.render(named, ReportPlans.sound())).doesNotContain("\u001b").doesNotContain("\r")
                .startsWith("red  [31m title");
    }
}
