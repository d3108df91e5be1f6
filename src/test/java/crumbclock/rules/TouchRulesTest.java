package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.plan.TouchEnd;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R04. */
class TouchRulesTest {

    @Test
    void should_have_every_touch_that_is_needed() {
        check(TouchRules::r04Missing)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).putIn("ana", 5).takeOut("ana", 2)).costs(0);
        check(TouchRules::r04Missing)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).putIn("ana", 5)).costs(1)
                .because(new Cause(List.of("A/chill"), "", new Span(198, 200),
                        "A/chill needs a taking-out touch and has none"));
        check(TouchRules::r04Missing).on(chilling(), aTimetable().step("A/chill", 100, 200)).costs(2);
    }

    @Test
    void should_have_no_touch_twice() {
        check(TouchRules::r04Twice)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).putIn("ana", 5).takeOut("ana", 2)).costs(0);
        check(TouchRules::r04Twice)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).putIn("ana", 5).putIn("ben", 5)).costs(1);
    }

    @Test
    void should_have_no_touch_without_need() {
        check(TouchRules::r04Needless)
                .on(chilling().step(handsOn("A/mix", 10)),
                        aTimetable().step("A/mix", 100, 110).putIn("ana", 5).step("A/chill", 110, 200).putIn("ana", 5))
                .costs(1).saying("A/mix has a putting-in touch and needs none");
    }

    @Test
    void should_find_touches_of_steps_that_are_not_placed() {
        check(TouchRules::r04Stray)
                .on(chilling(), aTimetable().touch("A/chill", TouchEnd.PUT_IN, "ana", 100, 105)).costs(1)
                .saying("A/chill: a touch of a step that is not placed");
    }

    @ParameterizedTest
    @CsvSource({"PUT_IN, 100, 105, 0", "PUT_IN, 100, 104, 1", "PUT_IN, 101, 106, 1", "PUT_IN, 99, 104, 1",
        "TAKE_OUT, 198, 200, 0", "TAKE_OUT, 197, 199, 1", "TAKE_OUT, 199, 201, 1"})
    void should_touch_at_the_ends_of_the_step(TouchEnd at, int from, int until, int findings) {
        check(TouchRules::r04Due)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).touch("A/chill", at, "ana", from, until))
                .costs(findings);
    }

    @Test
    void should_know_whoever_touches() {
        check(TouchRules::r04KnownPerson)
                .on(chilling(), aTimetable().step("A/chill", 100, 200).putIn("zoe", 5).takeOut("ana", 2)).costs(1);
    }

    @ParameterizedTest
    @CsvSource({"ana, 0", "ben, 1"})
    void should_have_the_skill_for_it(String who, int findings) {
        check(TouchRules::r04Skill)
                .on(kitchen().step(resting("A/fire", 10).putIn(5, "oven")),
                        aTimetable().step("A/fire", 100, 200).putIn(who, 5))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "145, 0", "146, 1", "159, 1", "160, 0", "195, 0", "196, 1"})
    void should_touch_on_shift_and_outside_breaks(int start, int findings) {
        check(TouchRules::r04OnShift)
                .on(aProblem().person(aPerson("ana").onShift(100, 200).onBreak(150, 160))
                        .step(resting("A/chill", 10).putIn(5)), aTimetable().step("A/chill", start, 400).putIn("ana", 5))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"94, 0", "95, 0", "96, 1", "100, 1", "109, 1", "110, 0"})
    void should_have_the_hands_free(int start, int findings) {
        check(TouchRules::r04HandsFree)
                .on(chilling().step(handsOn("B/pour", 10)),
                        aTimetable().work("B/pour", 100, 110, "ana").step("A/chill", start, 400).putIn("ana", 5))
                .costs(findings);
    }

    @Test
    void should_touch_beside_work_that_may_be_put_down_but_not_on_the_road() {
        check(TouchRules::r04HandsFree)
                .on(chilling().step(handsOn("B/pipe", 20).mayPutDown()),
                        aTimetable().work("B/pipe", 100, 120, "ana").step("A/chill", 105, 400).putIn("ana", 5))
                .costs(0);
        check(TouchRules::r04HandsFree)
                .on(chilling().step(handsOn("B/deliver", 20).mayPutDown().away()),
                        aTimetable().work("B/deliver", 100, 120, "ana").step("A/chill", 105, 400).putIn("ana", 5))
                .costs(1)
                .because(new Cause(List.of("A/chill", "B/deliver"), "ana", new Span(105, 110),
                        "ana cannot put down B/deliver to touch A/chill"));
    }

    @ParameterizedTest
    @CsvSource({"104, 1", "105, 0", "106, 0", "100, 1"})
    void should_touch_one_thing_at_a_time(int start, int findings) {
        check(TouchRules::r04OneAtATime)
                .on(chilling().step(resting("B/chill", 10).putIn(5)),
                        aTimetable().step("A/chill", 100, 400).putIn("ana", 5).step("B/chill", start, 400).putIn("ana", 5))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"deck, 100, 0", "deck, 101, 1", "attic, 100, 1"})
    void should_move_pans_of_one_cavity_together(String cavity, int start, int findings) {
        check(TouchRules::r04OneAtATime)
                .on(kitchen().oven(anOven("deck")).oven(anOven("attic"))
                        .step(resting("A/bake", 10).bakesAt(180).putIn(5)).step(resting("B/bake", 10).bakesAt(180).putIn(5)),
                        aTimetable().step("A/bake", 100, 200).inOven("deck").putIn("ana", 5)
                                .step("B/bake", start, 200).inOven(cavity).putIn("ana", 5))
                .costs(findings);
    }

    private static ProblemBuilder chilling() {
        return kitchen().step(resting("A/chill", 10).putIn(5).takeOut(2));
    }

    private static ProblemBuilder kitchen() {
        return aProblem().person(aPerson("ana").onShift(0, 2880).skilledIn("oven")).person(aPerson("ben").onShift(0, 2880));
    }
}
