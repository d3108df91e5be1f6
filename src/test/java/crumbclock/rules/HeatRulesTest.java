package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R08. */
class HeatRulesTest {

    @ParameterizedTest
    @CsvSource({"180, 100, 150, 0", "180, 101, 150, 1", "180, 99, 150, 0", "180, 100, 149, 1", "170, 100, 150, 1"})
    void should_have_heat_all_through(int celsius, int readyAt, int until, int findings) {
        check(HeatRules::r08Heated)
                .on(oven(), aTimetable().step("A/bake", 100, 150).inOven("deck").run("deck", celsius, 50, readyAt, until))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"144, 1", "145, 0", "146, 0"})
    void should_need_no_heat_while_it_cools_in_the_oven(int until, int findings) {
        // 5 to put in, 40 of heat, 20 of cooling, 5 to take out
        check(HeatRules::r08Heated)
                .on(oven(), aTimetable().step("A/cheesecake", 100, 170).inOven("deck").run("deck", 150, 50, 70, until))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"deck, 50, 70, 100, 0", "deck, 50, 50, 50, 0", "deck, 51, 50, 100, 1", "deck, 50, 101, 100, 1",
        "attic, 50, 70, 100, 1"})
    void should_be_a_run_that_can_be(String cavity, int from, int readyAt, int until, int findings) {
        check(HeatRules::r08SoundRun).on(oven(), aTimetable().run(cavity, 180, from, readyAt, until)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "101, 0"})
    void should_be_on_once_at_a_time(int from, int findings) {
        check(HeatRules::r08OneRunAtATime)
                .on(oven(), aTimetable().run("deck", 180, 50, 70, 100).run("deck", 150, from, 130, 200)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"69, 1", "70, 0", "71, 0"})
    void should_preheat_from_cold(int readyAt, int findings) {
        check(HeatRules::r08Preheat).on(oven(), aTimetable().run("deck", 180, 50, readyAt, 100)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0"})
    void should_preheat_unless_the_oven_stayed_on(int previousUntil, int findings) {
        check(HeatRules::r08Preheat)
                .on(oven(), aTimetable().run("deck", 180, 50, 70, previousUntil).run("deck", 170, 100, 104, 200))
                .costs(findings);
    }

    /** Two runs of no minutes at one minute each end where the other begins; neither has heated anything up. */
    @Test
    void should_not_let_two_moments_heat_each_other_up() {
        check(HeatRules::r08Preheat).on(oven(), aTimetable().run("deck", 180, 100, 100, 100).run("deck", 180, 100, 100, 100)
                .run("deck", 180, 100, 100, 200)).costs(3);
        check(HeatRules::r08Preheat).on(oven(), aTimetable().run("deck", 180, 50, 100, 100).run("deck", 180, 100, 100, 100)
                .run("deck", 180, 100, 100, 200)).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"180, 200, 103, 1", "180, 200, 104, 0", "180, 201, 105, 1", "180, 201, 106, 0", "180, 160, 107, 1",
        "180, 160, 108, 0", "180, 180, 100, 0"})
    void should_take_its_time_to_change(int celsius, int nextCelsius, int readyAt, int findings) {
        // 2 min for each begun 10 °C upward, 4 downward
        check(HeatRules::r08Change)
                .on(oven(), aTimetable().run("deck", celsius, 50, 70, 100).run("deck", nextCelsius, 100, readyAt, 200))
                .costs(findings);
    }

    @Test
    void should_say_how_long_a_change_takes() {
        check(HeatRules::r08Change)
                .on(oven(), aTimetable().run("deck", 180, 50, 70, 100).run("deck", 160, 100, 107, 200))
                .because(new Cause(List.of(), "deck", new Span(100, 107),
                        "deck has 7 min to go from 180 to 160 °C; it needs 8"));
    }

    @ParameterizedTest
    @CsvSource({"69, 1", "70, 0", "49, 1"})
    void should_be_empty_while_it_heats(int start, int findings) {
        check(HeatRules::r08EmptyWhileHeating)
                .on(oven(), aTimetable().run("deck", 180, 50, 70, 200).step("A/bake", start, start + 50).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"50, 145, 0", "50, 146, 1", "169, 200, 1", "170, 200, 0"})
    void should_be_off_while_something_cools_in_it(int from, int until, int findings) {
        check(HeatRules::r08OffWhileCooling)
                .on(oven(), aTimetable().step("A/cheesecake", 100, 170).inOven("deck").run("deck", 150, from, from, until))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"95, 0", "96, 1", "169, 1", "170, 0"})
    void should_cool_alone(int start, int findings) {
        check(HeatRules::r08AloneWhileCooling)
                .on(oven(), aTimetable().step("A/cheesecake", 100, 170).inOven("deck")
                        .step("A/bake", start, start + 50).inOven("deck"))
                .costs(findings);
    }

    private static ProblemBuilder oven() {
        return aProblem().oven(anOven("deck").preheatedIn(20))
                .step(resting("A/bake", 40, 45).bakesAt(180).putIn(5).takeOut(5))
                .step(resting("A/cheesecake", 60, 60).bakesAt(150).coolsInOven(20).putIn(5).takeOut(5));
    }
}
