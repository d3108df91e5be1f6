package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.BENCH;
import static crumbclock.domain.kitchen.PlaceKind.COOL_ROOM;
import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.domain.kitchen.PlaceKind.RACK;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.StoreBuilder.aStore;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.FormBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R11. */
class StoreClassRulesTest {

    @Test
    void should_stand_only_in_stores_that_the_method_allows() {
        check(StoreClassRules::r11StoreKind).on(kitchen(round(200)), held("fridge")).costs(0);
        check(StoreClassRules::r11StoreKind).on(kitchen(round(200)), held("cellar")).costs(1)
                .because(new Cause(List.of("A/hold"), "cellar, board", new Span(0, 100),
                        "A/hold stands in cellar (COOL_ROOM); allowed are [FRIDGE, RACK]"));
    }

    @Test
    void should_look_at_every_piece() {
        check(StoreClassRules::r11StoreKind)
                .on(kitchen(round(100).pieces(2)), held("fridge").onShelf("cellar", "board", 0, 0)).costs(1);
    }

    @ParameterizedTest
    @CsvSource({"rack, 0", "table, 1"})
    void should_stand_only_on_surfaces_that_the_method_allows(String surface, int findings) {
        check(StoreClassRules::r11SurfaceKind)
                .on(kitchen(round(200)), aTimetable().step("A/hold", 0, 100).onSurface(surface)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"24, 0", "25, 0", "26, 1"})
    void should_not_go_in_too_warm(int celsius, int findings) {
        check(StoreClassRules::r11Warmth).on(kitchen(round(200).warm(celsius)), held("fridge")).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"fridge, 1", "cellar, 0"})
    void should_keep_sugar_paste_out_of_humid_stores(String store, int findings) {
        check(StoreClassRules::r11Humid).on(kitchen(round(200).withPaste()), held(store)).costs(findings);
        check(StoreClassRules::r11Humid).on(kitchen(round(200)), held(store)).costs(0);
    }

    private static ProblemBuilder kitchen(FormBuilder form) {
        return aProblem().store(aFridge("fridge").takesUpTo(25).humid().shelf(aShelf("board", 500, 500, 300)))
                .store(aStore("cellar", COOL_ROOM).shelf(aShelf("board", 500, 500, 300)))
                .surface("rack", RACK, 1_000_000).surface("table", BENCH, 1_000_000)
                .step(resting("A/hold", 10).stands(form, FRIDGE, RACK));
    }

    private static TimetableBuilder held(String store) {
        return aTimetable().step("A/hold", 0, 100).onShelf(store, "board", 0, 0);
    }
}
