package crumbclock.report.view;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.report.ReportFixture;
import crumbclock.report.ReportPlans;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoundWordsTest {

    /** A plan of one order that is so late, for so many points, beside a bound. */
    private static List<String> sentences(int late, long points, int leastLate, long leastPoints) {
        var outcome = new Outcome("A1", true, 900, 960 + late, 60, late, List.of(), List.of());
        var timetable = new Timetable(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(outcome));
        return sentences(new Plan("one", timetable, List.of(), List.of(), points, 0, new Plan.SearchNote(1, 1),
                Optional.of(new LowerBound(leastPoints, leastLate, 960, true, List.of()))));
    }

    private static List<String> sentences(Plan plan) {
        return new BoundWords(new PlanView(ReportFixture.problem(), plan)).sentences();
    }

    @Test
    void should_say_that_nothing_is_late() {
        assertThat(sentences(0, 0, 0, 0)).containsExactly("Nothing is late, and nothing can be better there.");
    }

    @Test
    void should_say_that_no_plan_is_less_late() {
        assertThat(sentences(75, 12_500, 75, 12_500)).containsExactly("1 h 15 min late in all, and no plan can do better.");
        assertThat(sentences(20, 12_500, 20, 9_000)).containsExactly("20 min late in all; no plan can be less.");
    }

    @Test
    void should_say_how_much_less_late_a_plan_could_be_at_best() {
        assertThat(sentences(20, 7_000, 12, 6_200))
                .containsExactly("No plan can be less than 12 min late in all; this one is 20 min.");
        assertThat(sentences(20, 7_000, 0, 0))
                .containsExactly("20 min late in all; it is not proven that anything has to be late.");
    }

    @Test
    void should_say_nothing_without_a_bound_or_without_orders() {
        assertThat(sentences(ReportPlans.of(ReportPlans.emptyTimetable()))).isEmpty();
        assertThat(sentences(ReportPlans.unsound())).isEmpty();
    }
}
