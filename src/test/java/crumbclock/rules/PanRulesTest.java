package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.plan.PanPlace;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R07 for pans. */
class PanRulesTest {

    @Test
    void should_find_a_place_for_every_pan() {
        check(PanRules::r07PanMissing).on(twoPans(), baked()).costs(2);
        check(PanRules::r07PanMissing).on(twoPans(), baked().panAt(0, 20, 20)).costs(1);
        check(PanRules::r07PanMissing).on(twoPans(), baked().panAt(0, 20, 20).panAt(0, 240, 20)).costs(0);
    }

    @Test
    void should_find_one_place_only() {
        check(PanRules::r07PanTwice).on(twoPans(), baked().panAt(0, 20, 20).panAt(0, 240, 20)).costs(0);
        check(PanRules::r07PanTwice)
                .on(twoPans(), baked().panAt(0, 20, 20).pan(new PanPlace("A/bake", 0, "deck", 0, 240, 20, false)))
                .costs(1);
    }

    @Test
    void should_find_pans_that_belong_to_nothing() {
        check(PanRules::r07Stray).on(twoPans(), baked().pan(new PanPlace("A/bake", 2, "deck", 0, 20, 20, false)))
                .costs(1).saying("pan number 2 of a step that has 2 pans");
        check(PanRules::r07Stray)
                .on(twoPans(), aTimetable().pan(new PanPlace("A/bake", 0, "deck", 0, 20, 20, false))).costs(1);
    }

    @ParameterizedTest
    @CsvSource({"deck, 0", "attic, 1"})
    void should_keep_the_pans_of_a_bake_in_its_cavity(String cavity, int findings) {
        check(PanRules::r07OneCavity)
                .on(twoPans().oven(anOven("attic").rack(600, 400, 200)),
                        baked().pan(new PanPlace("A/bake", 0, cavity, 0, 20, 20, false)))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "0, 0", "1, 1"})
    void should_stand_on_a_rack_that_there_is(int rack, int findings) {
        check(PanRules::r07KnownRack).on(twoPans(), baked().panAt(rack, 20, 20)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"199, 0", "200, 0", "201, 1"})
    void should_be_no_taller_than_the_rack_allows(int heightMm, int findings) {
        check(PanRules::r07Height)
                .on(oven().step(resting("A/bake", 40).bakesAt(180).roundPan(200, heightMm)), baked().panAt(0, 20, 20))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"19, 20, 1", "20, 20, 0", "20, 19, 1", "380, 180, 0", "381, 180, 1", "380, 181, 1"})
    void should_stand_wholly_on_the_rack(int xMm, int yMm, int findings) {
        // a rack of 600 x 400 mm with 20 mm to the walls, a pan of 200 mm
        check(PanRules::r07Inside).on(twoPans(), baked().panAt(0, xMm, yMm)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"false, 1", "true, 0"})
    void should_fit_when_turned(boolean turned, int findings) {
        check(PanRules::r07Inside)
                .on(oven().step(resting("A/bake", 40).bakesAt(180).pan(360, 560, 50)),
                        baked().pan(new PanPlace("A/bake", 0, "deck", 0, 20, 20, turned)))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"229, 1", "230, 0", "231, 0"})
    void should_keep_the_gap_on_one_rack(int xMm, int findings) {
        check(PanRules::r07Apart).on(twoPans(), baked().panAt(0, 20, 20).panAt(0, xMm, 20)).costs(findings);
    }

    @Test
    void should_say_which_pans_are_too_close() {
        check(PanRules::r07Apart).on(twoPans(), baked().panAt(0, 20, 20).panAt(0, 229, 20))
                .because(new Cause(List.of("A/bake", "A/bake"), "deck, rack 1", new Span(100, 140),
                        "pan 0 of A/bake and pan 1 of A/bake are less than 10 mm apart or overlap"));
    }

    @ParameterizedTest
    @CsvSource({"0, 139, 1", "0, 140, 0", "1, 100, 0"})
    void should_share_a_place_at_other_times_or_on_other_racks(int rack, int start, int findings) {
        check(PanRules::r07Apart)
                .on(aProblem().oven(anOven("deck").rack(600, 400, 200).rack(600, 400, 200).gaps(20, 10))
                        .step(resting("A/bake", 40).bakesAt(180).roundPan(200, 50))
                        .step(resting("B/bake", 40).bakesAt(180).roundPan(200, 50)),
                        baked().panAt(0, 20, 20).step("B/bake", start, start + 40).inOven("deck").panAt(rack, 20, 20))
                .costs(findings);
    }

    private static ProblemBuilder oven() {
        return aProblem().oven(anOven("deck").rack(600, 400, 200).gaps(20, 10));
    }

    private static ProblemBuilder twoPans() {
        return oven().step(resting("A/bake", 40).bakesAt(180).roundPan(200, 50).roundPan(200, 50));
    }

    private static TimetableBuilder baked() {
        return aTimetable().step("A/bake", 100, 140).inOven("deck");
    }
}
