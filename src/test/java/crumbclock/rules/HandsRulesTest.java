package crumbclock.rules;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.StepBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R03 for one step. */
class HandsRulesTest {

    @ParameterizedTest
    @CsvSource({"ana, 1", "ana ben, 0", "ana ben cleo, 1", "ana ana, 1"})
    void should_have_as_many_different_people_as_needed(String names, int findings) {
        check(HandsRules::r03Heads)
                .on(kitchen(handsOn("A/lift", 10).people(2)), worked("A/lift", 100, 110, names.split(" ")))
                .costs(findings);
    }

    @Test
    void should_want_nobody_on_milestones_and_resting_steps() {
        check(HandsRules::r03Heads)
                .on(kitchen(handsOn("A/ready", 0)), aTimetable().step("A/ready", 100, 100)).costs(0);
        check(HandsRules::r03Heads)
                .on(kitchen(handsOn("A/ready", 0)), worked("A/ready", 100, 100, "ana")).costs(1);
        check(HandsRules::r03Heads)
                .on(kitchen(resting("A/cool", 10)), worked("A/cool", 100, 110, "ana")).costs(1);
    }

    @Test
    void should_know_everybody_who_works() {
        check(HandsRules::r03KnownPerson)
                .on(kitchen(handsOn("A/mix", 10)), worked("A/mix", 100, 110, "zoe"))
                .costs(1)
                .because(new Cause(List.of("A/mix"), "zoe", new Span(100, 110),
                        "nobody in the kitchen is known as \"zoe\""));
        check(HandsRules::r03KnownPerson).on(kitchen(handsOn("A/mix", 10)), worked("A/mix", 100, 110, "ana")).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"ana, 0", "ben, 1"})
    void should_have_the_skill(String name, int findings) {
        check(HandsRules::r03Skill)
                .on(kitchen(handsOn("A/pipe", 10).skill("piping")), worked("A/pipe", 100, 110, name)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"100, 110, 0", "99, 110, 1", "101, 110, 1", "100, 109, 1", "100, 111, 1"})
    void should_fill_the_step_with_work(int from, int until, int findings) {
        check(HandsRules::r03Spans)
                .on(kitchen(handsOn("A/mix", 10)),
                        aTimetable().step("A/mix", 100, 110).by("ana", new Span(from, until)))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"110, 0", "109, 1"})
    void should_work_in_order(int secondStart, int findings) {
        check(HandsRules::r03Spans)
                .on(kitchen(handsOn("A/mix", 20).mayPutDown()), aTimetable().step("A/mix", 100, 120)
                        .by("ana", new Span(100, 110), new Span(secondStart, 120)))
                .costs(findings);
    }

    @Test
    void should_work_at_the_same_time_when_together() {
        check(HandsRules::r03Spans)
                .on(kitchen(handsOn("A/lift", 20).people(2).mayPutDown()), aTimetable().step("A/lift", 100, 130)
                        .by("ana", new Span(100, 110), new Span(120, 130))
                        .by("ben", new Span(100, 111), new Span(121, 130)))
                .costs(1).saying("broken or unlike");
    }

    @ParameterizedTest
    @CsvSource({"100, 0", "101, 1"})
    void should_take_no_time_for_a_milestone(int end, int findings) {
        check(HandsRules::r03Spans)
                .on(kitchen(handsOn("A/ready", 0)), aTimetable().step("A/ready", 100, end)).costs(findings);
    }

    @Test
    void should_put_down_only_what_may_be_put_down() {
        var inPieces = aTimetable().step("A/mix", 100, 130).by("ana", new Span(100, 110), new Span(120, 130));

        check(HandsRules::r03InOneGo).on(kitchen(handsOn("A/mix", 20)), inPieces).costs(1);
        check(HandsRules::r03InOneGo).on(kitchen(handsOn("A/mix", 20).mayPutDown()), inPieces).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"110, 1", "111, 0", "112, 1"})
    void should_take_as_long_as_the_pace_says(int end, int findings) {
        check(HandsRules::r03Minutes)
                .on(kitchen(handsOn("A/mix", 10).kind("mixing")), worked("A/mix", 100, end, "ana")).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"114, 1", "115, 0", "116, 1"})
    void should_take_as_long_as_the_slowest_needs(int end, int findings) {
        check(HandsRules::r03Minutes)
                .on(kitchen(handsOn("A/mix", 10).kind("mixing").people(2)), worked("A/mix", 100, end, "ana", "ben"))
                .costs(findings);
    }

    private static ProblemBuilder kitchen(StepBuilder step) {
        return aProblem().step(step)
                .person(aPerson("ana").onShift(0, 1000).skilledIn("piping").paceFor("mixing", 1.1))
                .person(aPerson("ben").onShift(0, 1000).paceFor("mixing", 1.5))
                .person(aPerson("cleo").onShift(0, 1000));
    }

    private static TimetableBuilder worked(String step, int start, int end, String... people) {
        var timetable = aTimetable().step(step, start, end);
        for (String person : people) {
            timetable.by(person, new Span(start, end));
        }
        return timetable;
    }
}
