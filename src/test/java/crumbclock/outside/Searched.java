package crumbclock.outside;

import static crumbclock.fixture.PlanAssert.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.search.SearchResult;

/** A search by steps with a fixed seed, and the audit of what it found. */
record Searched(Problem problem, SearchResult result, AuditResult audit) {

    static Searched of(Problem problem, long seed, long steps) {
        SearchResult result = PlanSearch.search(problem, SearchLimits.ofSteps(seed, steps), SearchListener.SILENT);
        return new Searched(problem, result, Audit.audit(problem, result.timetable()));
    }

    boolean isPossible() {
        return result.timetable().outcomes().stream().allMatch(outcome -> outcome.possible());
    }

    int start(String stepId) {
        return step(stepId).start();
    }

    int end(String stepId) {
        return step(stepId).end();
    }

    PlacedStep step(String stepId) {
        return result.timetable().steps().stream().filter(step -> step.stepId().equals(stepId)).findFirst()
                .orElseThrow(() -> new AssertionError("step " + stepId + " is not in the plan"));
    }

    /** The audit finds nothing and comes to the engine's cost. */
    Searched assertSound() {
        assertThat(problem, result.timetable()).isSound();
        assertThat(isPossible()).as("all orders are possible").isTrue();
        assertThat(audit.mediumCost()).as("lateness by the audit and by the engine").isEqualTo(result.cost().medium());
        assertThat(audit.softCost()).as("wishes by the audit and by the engine").isEqualTo(result.cost().soft());
        return this;
    }
}
