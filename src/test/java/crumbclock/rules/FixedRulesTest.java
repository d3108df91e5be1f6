package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.problem.FixedStep;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R15. */
class FixedRulesTest {

    @ParameterizedTest
    @CsvSource({"100, 200, 0", "99, 200, 1", "101, 200, 1", "100, 199, 1", "100, 201, 1"})
    void should_keep_the_step_as_recorded(int start, int end, int findings) {
        check(FixedRules::r15Step).on(recorded(chilled()), aTimetable().step("A/chill", start, end)).costs(findings);
    }

    @Test
    void should_miss_a_recorded_step() {
        check(FixedRules::r15Step).on(recorded(chilled()), aTimetable()).costs(1)
                .because(new Cause(List.of("A/chill"), "", new Span(100, 200),
                        "A/chill is not in the timetable as it was recorded"));
    }

    @ParameterizedTest
    @CsvSource({"ana, 5, 0", "ben, 5, 1", "ana, 6, 1"})
    void should_keep_touches_as_recorded(String who, int minutes, int findings) {
        check(FixedRules::r15Touches)
                .on(recorded(chilled().putIn("ana", 5)), chilled().putIn(who, minutes)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"20, 0", "19, 1", "21, 1"})
    void should_keep_pans_as_recorded(int xMm, int findings) {
        check(FixedRules::r15Pans).on(recorded(baked().panAt(0, 20, 20)), baked().panAt(0, xMm, 20)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"20, 0", "19, 1", "21, 1"})
    void should_keep_placements_as_recorded(int xMm, int findings) {
        check(FixedRules::r15Placements).on(recorded(chilled().onShelf("fridge", "top", 20, 20)),
                chilled().onShelf("fridge", "top", xMm, 20)).costs(findings);
    }

    private static TimetableBuilder chilled() {
        return aTimetable().step("A/chill", 100, 200);
    }

    private static TimetableBuilder baked() {
        return aTimetable().step("A/bake", 100, 140).inOven("deck");
    }

    private static ProblemBuilder recorded(TimetableBuilder record) {
        var past = record.build();
        return aProblem().person(aPerson("ana").onShift(0, 2880)).oven(anOven("deck").rack(500, 500, 300))
                .store(aFridge("fridge").shelf(aShelf("top", 500, 500, 300)))
                .step(resting("A/chill", 10).putIn(5).stands(round(200), FRIDGE))
                .step(resting("A/bake", 40).bakesAt(180).roundPan(200, 50))
                .fixed(new FixedStep(past.steps().get(0), past.touches(), past.pans(), past.placements()));
    }
}
