package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
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

/** R07 for bakes, and R09. */
class OvenRulesTest {

    @ParameterizedTest
    @CsvSource({"A/bake, deck, 0", "A/bake, '', 1", "A/bake, attic, 1", "A/mix, '', 0", "A/mix, deck, 1"})
    void should_bake_in_a_cavity_that_there_is(String step, String cavity, int findings) {
        check(OvenRules::r07Cavity)
                .on(bakes(180, 180).step(handsOn("A/mix", 10)), aTimetable().step(step, 0, 10).inOven(cavity))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"180, 139, 0", "170, 139, 1", "170, 140, 0", "170, 141, 0"})
    void should_bake_at_one_temperature(int celsius, int start, int findings) {
        check(OvenRules::r07OneTemperature)
                .on(bakes(180, celsius), aTimetable().step("A/bake", 100, 140).inOven("deck")
                        .step("B/bake", start, start + 40).inOven("deck"))
                .costs(findings);
    }

    @Test
    void should_let_two_cavities_differ() {
        check(OvenRules::r07OneTemperature)
                .on(bakes(180, 160).oven(anOven("attic")), aTimetable().step("A/bake", 100, 140).inOven("deck")
                        .step("B/bake", 100, 140).inOven("attic"))
                .costs(0);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "220, 0", "221, 1"})
    void should_bake_in_the_range_of_the_oven(int celsius, int findings) {
        check(OvenRules::r07Range)
                .on(aProblem().oven(anOven("deck").between(100, 220)).step(resting("A/bake", 40).bakesAt(celsius)),
                        aTimetable().step("A/bake", 100, 140).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"60, 0", "61, 1", "199, 1", "200, 0"})
    void should_not_bake_while_the_cavity_is_away(int start, int findings) {
        check(OvenRules::r07BakeAway)
                .on(aProblem().oven(anOven("deck").away(100, 200)).step(resting("A/bake", 40).bakesAt(180)),
                        aTimetable().step("A/bake", start, start + 40).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"20, 100, 0", "20, 101, 1", "199, 300, 1", "200, 300, 0"})
    void should_not_be_on_while_away(int from, int until, int findings) {
        check(OvenRules::r07RunAway)
                .on(aProblem().oven(anOven("deck").away(100, 200)), aTimetable().run("deck", 180, from, from + 20, until))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"95, 0", "100, 0", "101, 1", "105, 1", "124, 1", "125, 0", "200, 0"})
    void should_not_put_in_while_the_door_is_shut(int start, int findings) {
        // the door is shut for A from 105 to 125
        check(OvenRules::r09DoorShut)
                .on(doors(), aTimetable().step("A/bake", 100, 150).inOven("deck")
                        .step("B/bake", start, start + 80).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"105, 0", "106, 1", "129, 1", "130, 0"})
    void should_not_take_out_while_the_door_is_shut(int end, int findings) {
        check(OvenRules::r09DoorShut)
                .on(doors(), aTimetable().step("A/bake", 100, 150).inOven("deck")
                        .step("B/bake", 40, end).inOven("deck"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"105, 0", "106, 1", "124, 1", "125, 0"})
    void should_count_a_moment_only_strictly_inside(int start, int findings) {
        check(OvenRules::r09DoorShut)
                .on(doors(), aTimetable().step("A/bake", 100, 150).inOven("deck")
                        .step("C/bake", start, start + 80).inOven("deck"))
                .costs(findings);
    }

    @Test
    void should_say_for_whom_the_door_is_shut() {
        check(OvenRules::r09DoorShut)
                .on(doors(), aTimetable().step("A/bake", 100, 150).inOven("deck").step("B/bake", 101, 181).inOven("deck"))
                .because(new Cause(List.of("A/bake", "B/bake"), "deck", new Span(105, 125),
                        "B/bake goes in or out while the door must stay shut for A/bake"));
    }

    private static ProblemBuilder doors() {
        return aProblem().oven(anOven("deck"))
                .step(resting("A/bake", 40).bakesAt(180).putIn(5).takeOut(5).doorShut(20))
                .step(resting("B/bake", 40).bakesAt(180).putIn(5).takeOut(5))
                .step(resting("C/bake", 40).bakesAt(180));
    }

    private static ProblemBuilder bakes(int celsius, int otherCelsius) {
        return aProblem().oven(anOven("deck")).step(resting("A/bake", 40).bakesAt(celsius))
                .step(resting("B/bake", 40).bakesAt(otherCelsius));
    }
}
