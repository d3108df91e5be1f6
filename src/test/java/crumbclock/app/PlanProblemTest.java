package crumbclock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Plan;
import crumbclock.engine.cost.Cost;
import crumbclock.fixture.TwoCakeMonday;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanProblemTest {

    private static final SearchLimits SHORT = SearchLimits.ofSteps(3, 20);

    @Test
    void planIsAuditedAndRepeatsItself() {
        // when
        Plan plan = PlanProblem.plan(TwoCakeMonday.problem(), SHORT, SearchListener.SILENT);

        // then
        AuditResult audit = Audit.audit(TwoCakeMonday.problem(), plan.timetable());
        assertThat(plan.findings()).isEqualTo(audit.findings());
        assertThat(plan.cost()).isEqualTo(audit.cost());
        assertThat(plan.search().seed()).isEqualTo(3);
        assertThat(plan.timetable().outcomes()).allMatch(outcome -> !outcome.waitsFor().isEmpty());
        assertThat(PlanProblem.plan(TwoCakeMonday.problem(), SHORT, SearchListener.SILENT)).isEqualTo(plan);
    }

    @Test
    void differentCostsAreAFaultThatNamesBoth() {
        var audit = new AuditResult(List.of(), List.of(), 100, 2345);

        assertThatThrownBy(() -> PlanProblem.agree(new Cost(100, 2344), audit)).isInstanceOf(PlanFault.class)
                .hasMessageContaining("engine 100 medium and 2344 soft").hasMessageContaining("audit 100 medium and 2345 soft");
        assertThatCode(() -> PlanProblem.agree(new Cost(100, 2345), audit)).doesNotThrowAnyException();
    }

    @Test
    void auditTakesNoNoticeOfWhatThePlanSaysOfItself() {
        // given
        var boast = new Plan("Monday", TwoCakeMonday.timetable(), List.of(), List.of(), 1, 1, new Plan.SearchNote(9, 9),
                Optional.of(new LowerBound(1, 1, 1, true, List.of())));

        // when
        Plan audited = AuditPlan.withBound(TwoCakeMonday.problem(), boast);

        // then
        AuditResult audit = Audit.audit(TwoCakeMonday.problem(), TwoCakeMonday.timetable());
        assertThat(audited).isEqualTo(new Plan("Monday", TwoCakeMonday.timetable(), audit.findings(), audit.cost(),
                audit.mediumCost(), audit.softCost(), new Plan.SearchNote(9, 9),
                Optional.of(Bound.of(TwoCakeMonday.problem()))));
        assertThat(audited.softCost()).isNotEqualTo(1);
        assertThat(AuditPlan.audit(TwoCakeMonday.problem(), boast).bound()).isEmpty();
    }
}
