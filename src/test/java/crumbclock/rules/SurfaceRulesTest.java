package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.BENCH;
import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.domain.kitchen.PlaceKind.RACK;
import static crumbclock.fixture.FormBuilder.box;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R06, the surfaces. */
class SurfaceRulesTest {

    @ParameterizedTest
    @CsvSource({"A/cool, rack, 0", "A/cool, '', 1", "A/coat, '', 1", "A/coat, rack, 0", "A/hold, '', 0", "A/mix, '', 0",
        "A/mix, rack, 1"})
    void should_stand_on_a_surface_when_nothing_else_will_do(String step, String surface, int findings) {
        check(SurfaceRules::r06SurfaceGiven)
                .on(kitchen(100_000), aTimetable().step(step, 0, 10).onSurface(surface)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"rack, 0", "table, 1"})
    void should_stand_on_a_surface_that_there_is(String surface, int findings) {
        check(SurfaceRules::r06KnownSurface)
                .on(kitchen(100_000), aTimetable().step("A/cool", 0, 10).onSurface(surface)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99999, 1", "100000, 0", "100001, 0"})
    void should_find_room_by_area(int areaMm2, int findings) {
        // two round pieces of 200 mm take 2 x 40,000 mm², a box of 100 x 200 takes 20,000
        check(SurfaceRules::r06SurfaceArea)
                .on(kitchen(areaMm2), aTimetable().step("A/cool", 0, 100).onSurface("rack")
                        .step("B/cool", 99, 200).onSurface("rack"))
                .costs(findings);
    }

    @Test
    void should_say_how_much_is_too_much() {
        check(SurfaceRules::r06SurfaceArea)
                .on(kitchen(99_999), aTimetable().step("A/cool", 0, 100).onSurface("rack")
                        .step("B/cool", 99, 200).onSurface("rack"))
                .because(new Cause(List.of(), "rack", new Span(99, 100), "things on rack take 100000 mm²; it has 99999"));
        check(SurfaceRules::r06SurfaceArea)
                .on(kitchen(99_999), aTimetable().step("A/cool", 0, 100).onSurface("rack")
                        .step("B/cool", 100, 200).onSurface("rack"))
                .costs(0);
    }

    @ParameterizedTest
    @CsvSource({"490, 0", "491, 1", "599, 1", "600, 0"})
    void should_not_stand_on_a_surface_that_is_away(int start, int findings) {
        check(SurfaceRules::r06SurfaceAway)
                .on(kitchen(100_000), aTimetable().step("A/cool", start, start + 10).onSurface("rack")).costs(findings);
    }

    private static ProblemBuilder kitchen(int areaMm2) {
        return aProblem().surface("rack", RACK, areaMm2, new Span(500, 600))
                .step(resting("A/cool", 10).stands(round(200).pieces(2), RACK))
                .step(resting("B/cool", 10).stands(box(100, 200), RACK))
                .step(handsOn("A/coat", 10).stands(round(200), BENCH))
                .step(resting("A/hold", 10).stands(round(200), RACK, FRIDGE))
                .step(handsOn("A/mix", 10));
    }
}
