package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.bound.Bound;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.Pinned;
import crumbclock.fixture.RandomKitchens;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On random kitchens of every kind no sound plan is better than the bound, not even when parts of it have happened. */
class BoundKitchensTest {

    private static final int BLOCK = 25;
    private static final long STEPS = 60;

    @ParameterizedTest
    @ValueSource(longs = {0, 25, 50, 75, 100, 125, 150, 175})
    void should_never_be_above_a_sound_plan(long first) {
        for (long seed = first; seed < first + BLOCK; seed++) {
            Problem problem = RandomKitchens.of(seed);
            Timetable timetable = PlanSearch.search(problem, SearchLimits.ofSteps(seed, STEPS), SearchListener.SILENT).timetable();

            assertNeverAbove("kitchen " + seed, problem, timetable);
            assertNeverAbove("kitchen " + seed + " half done", halfDone(seed, problem, timetable), timetable);
        }
    }

    /** The problem with some of the plan's steps recorded: the plan is still one of its plans. */
    private static Problem halfDone(long seed, Problem problem, Timetable timetable) {
        Dice dice = new Dice(seed);
        Set<String> recorded = new TreeSet<>();
        for (PlacedStep step : timetable.steps()) {
            if (dice.onceIn(3)) {
                recorded.add(step.stepId());
            }
        }
        return Pinned.steps(problem, timetable, recorded);
    }

    private static void assertNeverAbove(String what, Problem problem, Timetable timetable) {
        AuditResult audit = Audit.audit(problem, timetable);
        assertThat(audit.findings()).as(what).allMatch(finding -> finding.message().endsWith("no reason is given"));
        Set<String> made = timetable.outcomes().stream().filter(Outcome::possible).map(Outcome::orderId)
                .collect(Collectors.toSet());

        LowerBound bound = Bound.of(problem, made);

        assertThat(bound.medium()).as("lateness of %s", what).isLessThanOrEqualTo(audit.mediumCost());
        assertThat(bound.endMinute()).as("end of %s", what)
                .isLessThanOrEqualTo(timetable.steps().stream().mapToInt(PlacedStep::end).max().orElse(0));
        assertThat(bound.lateMinutes()).as("minutes late of %s", what)
                .isLessThanOrEqualTo(timetable.outcomes().stream().mapToInt(Outcome::lateMinutes).sum());
        assertThat(bound.allPossible() || made.size() < problem.orders().size()).as("%s can be made", what).isTrue();
        for (int order = 0; order < problem.orders().size(); order++) {
            assertNeverAbove(what, bound.orders().get(order), timetable.outcomes().get(order));
        }
    }

    private static void assertNeverAbove(String what, LowerBound.OrderBound bound, Outcome outcome) {
        assertThat(bound.orderId()).isEqualTo(outcome.orderId());
        if (outcome.possible()) {
            assertThat(bound.possible()).as("%s of %s", outcome.orderId(), what).isTrue();
            assertThat(bound.readyMinute()).as("%s ready, %s", outcome.orderId(), what).isLessThanOrEqualTo(outcome.readyMinute());
            assertThat(bound.handMinute()).as("%s handed over, %s", outcome.orderId(), what).isLessThanOrEqualTo(outcome.handMinute());
            assertThat(bound.lateMinutes()).as("%s late, %s", outcome.orderId(), what).isLessThanOrEqualTo(outcome.lateMinutes());
        }
    }
}
