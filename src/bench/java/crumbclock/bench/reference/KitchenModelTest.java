package crumbclock.bench.reference;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.bench.kitchen.MadeUpShop;
import crumbclock.rules.Audit;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KitchenModelTest {

    /** A relaxation: where there is a sound plan, it has a solution, and nothing that it proves is above the plan's cost. */
    @ParameterizedTest
    @ValueSource(strings = {"five-due-saturday", "small-fridge", "free-from", "late-order"})
    void should_prove_no_bound_above_the_cost_of_a_sound_plan(String name) {
        var problem = MadeUpShop.read(Path.of("problems", name + ".json"));
        var found = PlanSearch.search(problem, SearchLimits.ofSteps(1, 500), SearchListener.SILENT);
        var audit = Audit.audit(problem, found.timetable());
        assertThat(audit.findings()).isEmpty();

        var exact = Exact.solve(KitchenModel.of(problem, true).model(), 5, 1);

        assertThat(exact.status()).isIn("OPTIMAL", "FEASIBLE", "UNKNOWN");
        assertThat(exact.bound()).isLessThanOrEqualTo(audit.softCost() + KitchenModel.MEDIUM * audit.mediumCost());
    }
}
