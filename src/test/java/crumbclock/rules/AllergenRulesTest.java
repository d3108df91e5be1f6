package crumbclock.rules;

import static crumbclock.domain.kitchen.PlaceKind.FRIDGE;
import static crumbclock.domain.kitchen.PlaceKind.RACK;
import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
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

/** R13. */
class AllergenRulesTest {

    @ParameterizedTest
    @CsvSource({"0, 110, 130, 0", "0, 110, 129, 1", "0, 109, 130, 1", "0, 181, 201, 1", "0, 180, 200, 0", "1, 110, 130, 1"})
    void should_clean_fully_before_what_must_be_free(int unit, int from, int until, int findings) {
        check(AllergenRules::r13Equipment)
                .on(bowls(), mixed("N/mix", "F/mix").cleaning("bowl", unit, from, until)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"N/mix, F/mix, 1", "F/mix, N/mix, 0", "N/mix, N/mix, 0", "M/mix, F/mix, 0"})
    void should_clean_only_for_what_must_be_free(String first, String second, int findings) {
        check(AllergenRules::r13Equipment).on(bowls(), mixed(first, second)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"44, 1", "45, 0"})
    void should_clean_longer_for_an_allergen_that_needs_it(int minutes, int findings) {
        check(AllergenRules::r13Equipment)
                .on(bowls(), mixed("S/mix", "F/mix").cleaning("bowl", 0, 120, 120 + minutes)).costs(findings);
    }

    @Test
    void should_remember_the_allergen_beyond_other_uses() {
        check(AllergenRules::r13Equipment).on(bowls(), mixed("N/mix", "F/mix")
                .step("M/mix", 150, 160).with("bowl", 0)).costs(1)
                .because(new Cause(List.of("N/mix", "F/mix"), "bowl", new Span(110, 200),
                        "piece 0 of bowl held [nuts] for N/mix and then serves F/mix without a full clean of 20 min between"));
    }

    @ParameterizedTest
    @CsvSource({"139, 1", "140, 0"})
    void should_not_share_the_oven(int start, int findings) {
        check(AllergenRules::r13Oven)
                .on(aProblem().oven(anOven("deck")).step(resting("N/bake", 40).bakesAt(180).contains("nuts"))
                        .step(resting("F/bake", 40).bakesAt(180).freeFrom("nuts")),
                        aTimetable().step("N/bake", 100, 140).inOven("deck").step("F/bake", start, 200).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"rack, 139, 1", "rack, 140, 0", "other, 139, 0"})
    void should_not_stand_open_on_one_surface(String surface, int start, int findings) {
        check(AllergenRules::r13Surface)
                .on(held(round(200).open(), round(200).open()), aTimetable().step("N/hold", 100, 140).onSurface("rack")
                        .step("F/hold", start, 200).onSurface(surface))
                .costs(findings);
    }

    @Test
    void should_stand_on_one_surface_when_one_is_covered() {
        var both = aTimetable().step("N/hold", 100, 140).onSurface("rack").step("F/hold", 100, 200).onSurface("rack");

        check(AllergenRules::r13Surface).on(held(round(200), round(200).open()), both).costs(0);
        check(AllergenRules::r13Surface).on(held(round(200).open(), round(200)), both).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"top, 139, 1", "top, 140, 0", "middle, 139, 0"})
    void should_not_stand_open_on_one_shelf(String shelf, int start, int findings) {
        check(AllergenRules::r13Shelf)
                .on(held(round(200).open(), round(200).open()), shelved("top", shelf, start)).costs(findings);
    }

    @Test
    void should_stand_on_one_shelf_when_one_is_covered() {
        check(AllergenRules::r13Shelf).on(held(round(200), round(200).open()), shelved("top", "top", 100)).costs(0);
        check(AllergenRules::r13Shelf).on(held(round(200).open(), round(200)), shelved("top", "top", 100)).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"middle, top, 100, 0", "middle, middle, 100, 0", "middle, low, 100, 1", "top, low, 139, 1", "top, low, 140, 0"})
    void should_not_stand_open_below(String nutShelf, String freeShelf, int start, int findings) {
        check(AllergenRules::r13Below)
                .on(held(round(200).open(), round(200).open()), shelved(nutShelf, freeShelf, start)).costs(findings);
    }

    @Test
    void should_stand_below_when_one_is_covered() {
        check(AllergenRules::r13Below).on(held(round(200), round(200).open()), shelved("top", "low", 100)).costs(0);
        check(AllergenRules::r13Below).on(held(round(200).open(), round(200)), shelved("top", "low", 100)).costs(0);
    }

    @Test
    void should_keep_a_free_shelf_free_even_from_what_is_covered() {
        check(AllergenRules::r13FreeShelf)
                .on(held(round(200), round(200)), aTimetable().step("N/hold", 0, 10).onShelf("fridge", "free", 0, 0)).costs(1);
        check(AllergenRules::r13FreeShelf)
                .on(held(round(200), round(200)), aTimetable().step("N/hold", 0, 10).onShelf("fridge", "top", 0, 0)).costs(0);
        check(AllergenRules::r13FreeShelf)
                .on(held(round(200), round(200)), aTimetable().step("F/hold", 0, 10).onShelf("fridge", "free", 0, 0)).costs(0);
    }

    private static ProblemBuilder bowls() {
        return aProblem().pool(aPool("bowl", 2).fullyCleanedIn(20).fullyCleanedOf("sesame", 45))
                .step(resting("N/mix", 10).takes("bowl", 1).contains("nuts"))
                .step(resting("S/mix", 10).takes("bowl", 1).contains("nuts").contains("sesame"))
                .step(resting("M/mix", 10).takes("bowl", 1).contains("milk"))
                .step(resting("F/mix", 10).takes("bowl", 1).freeFrom("nuts").freeFrom("sesame"));
    }

    private static TimetableBuilder mixed(String first, String second) {
        return aTimetable().step(first, 100, 110).with("bowl", 0).step(second, 200, 210).with("bowl", 0);
    }

    private static ProblemBuilder held(FormBuilder nutCake, FormBuilder freeCake) {
        return aProblem().surface("rack", RACK, 1_000_000).surface("other", RACK, 1_000_000)
                .store(aFridge("fridge").shelf(aShelf("top", 500, 500, 300)).shelf(aShelf("middle", 500, 500, 300))
                        .shelf(aShelf("low", 500, 500, 300)).shelf(aShelf("free", 500, 500, 300).freeFrom("nuts")))
                .step(resting("N/hold", 10).stands(nutCake, FRIDGE, RACK).contains("nuts"))
                .step(resting("F/hold", 10).stands(freeCake, FRIDGE, RACK).freeFrom("nuts"));
    }

    private static TimetableBuilder shelved(String nutShelf, String freeShelf, int start) {
        return aTimetable().step("N/hold", 100, 140).onShelf("fridge", nutShelf, 0, 0)
                .step("F/hold", start, 200).onShelf("fridge", freeShelf, 250, 0);
    }
}
