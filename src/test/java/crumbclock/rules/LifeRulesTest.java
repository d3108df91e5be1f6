package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.AMBIENT;
import static crumbclock.domain.kitchen.PlaceKind.COOL_ROOM;
import static crumbclock.domain.kitchen.PlaceKind.FREEZER;
import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.domain.kitchen.PlaceKind.RACK;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aStore;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.LifeLimit;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R12. */
class LifeRulesTest {

    @ParameterizedTest
    @CsvSource({"fridge, 219, 0", "fridge, 220, 0", "fridge, 221, 1", "freezer, 220, 0", "freezer, 221, 1", "cellar, 140, 0",
        "cellar, 141, 1"})
    void should_add_up_the_minutes_out_of_the_cold(String store, int serveStart, int findings) {
        // made by 100, 80 min in the store, 40 min out of the cold allowed
        check(LifeRules::r12OutOfCold)
                .on(kitchen(40), kept(store, 120, 200, serveStart)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"60, 300, 0", "200, 400, 0"})
    void should_count_only_what_lies_between(int from, int until, int findings) {
        check(LifeRules::r12OutOfCold).on(kitchen(100), kept("fridge", from, until, 300)).costs(findings);
    }

    @Test
    void should_say_how_long_it_was_out() {
        check(LifeRules::r12OutOfCold).on(kitchen(40), kept("fridge", 120, 200, 221))
                .because(new Cause(List.of("A", "A/fill", "A/serve"), "", new Span(100, 221),
                        "custard is out of the cold for 41 min; 40 are allowed"));
    }

    @Test
    void should_count_a_surface_as_out_of_the_cold_and_skip_what_is_not_placed() {
        check(LifeRules::r12OutOfCold).on(kitchen(40), aTimetable().step("A/fill", 90, 100)
                .step("A/hold", 100, 141).onSurface("rack").step("A/serve", 141, 150)).costs(1);
        check(LifeRules::r12OutOfCold).on(kitchen(40), aTimetable().step("A/fill", 90, 100)).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"340, 0", "341, 1"})
    void should_burn_life_by_the_place(int serveStart, int findings) {
        // a life of 240 min ambient or 960 in the fridge: 320 min in the fridge burn a third, 160 outside the rest
        check(LifeRules::r12Life).on(kitchen(40), kept("fridge", 100, 420, serveStart + 240)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"340, 0", "341, 1"})
    void should_burn_life_as_ambient_where_nothing_else_is_said(int serveStart, int findings) {
        check(LifeRules::r12Life).on(kitchen(40), kept("cellar", 100, 200, serveStart)).costs(findings);
        check(LifeRules::r12Life)
                .on(kitchen(40), aTimetable().step("A/fill", 90, 100).step("A/serve", serveStart, serveStart + 10))
                .costs(findings);
    }

    @Test
    void should_say_how_much_life_is_gone() {
        check(LifeRules::r12Life).on(kitchen(40), kept("cellar", 100, 200, 400))
                .because(new Cause(List.of("A", "A/fill", "A/serve"), "", new Span(100, 400),
                        "custard is kept for 300 min, which is 1249 thousandths of its life"));
    }

    @Test
    void should_survive_a_wait_of_years() {
        check(LifeRules::r12Life).on(kitchen(40), kept("fridge", 100, 90_000_000, 99_000_000)).costs(1);
    }

    private static ProblemBuilder kitchen(int mostMinutesOut) {
        return aProblem()
                .store(aStore("fridge", FRIDGE).shelf(aShelf("board", 500, 500, 300)))
                .store(aStore("freezer", FREEZER).shelf(aShelf("board", 500, 500, 300)))
                .store(aStore("cellar", COOL_ROOM).shelf(aShelf("board", 500, 500, 300)))
                .surface("rack", RACK, 1_000_000)
                .step(handsOn("A/fill", 10)).step(handsOn("A/serve", 10))
                .step(resting("A/hold", 10).stands(round(200), FRIDGE, FREEZER, COOL_ROOM, RACK))
                .limit(new ColdLimit("cold", "custard", "A", "A/fill", "A/serve", List.of("A/hold"), mostMinutesOut))
                .limit(new LifeLimit("life", "custard", "A", "A/fill", "A/serve", List.of("A/hold"),
                        Map.of(AMBIENT, 240, FRIDGE, 960)));
    }

    private static TimetableBuilder kept(String store, int from, int until, int serveStart) {
        return aTimetable().step("A/fill", 90, 100).step("A/hold", from, until).onShelf(store, "board", 0, 0)
                .step("A/serve", serveStart, serveStart + 10);
    }
}
