package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
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

/** R03 for one person's day, R05 and R14. */
class HoursRulesTest {

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "190, 0", "191, 1", "239, 1", "240, 0", "490, 0", "491, 1"})
    void should_work_on_shift_and_outside_breaks(int start, int findings) {
        check(HoursRules::r03OnShift)
                .on(aProblem().step(handsOn("A/mix", 10)).person(aPerson("ana").onShift(100, 500).onBreak(200, 240)),
                        aTimetable().work("A/mix", start, start + 10, "ana"))
                .costs(findings);
    }

    @Test
    void should_work_across_shifts_that_touch() {
        check(HoursRules::r03OnShift)
                .on(aProblem().step(handsOn("A/mix", 10)).person(aPerson("ana").onShift(100, 400).onShift(400, 500)),
                        aTimetable().work("A/mix", 395, 405, "ana"))
                .costs(0);
        check(HoursRules::r03OnShift)
                .on(aProblem().step(handsOn("A/mix", 10)).person(aPerson("ana").onShift(100, 400).onShift(401, 500)),
                        aTimetable().work("A/mix", 395, 405, "ana"))
                .costs(1)
                .because(new Cause(List.of("A/mix"), "ana", new Span(400, 401),
                        "ana works on A/mix outside a shift or in a break"));
    }

    @ParameterizedTest
    @CsvSource({"ana, 109, 1", "ana, 110, 0", "ana, 111, 0", "ben, 109, 0"})
    void should_do_one_thing_at_a_time(String who, int start, int findings) {
        check(HoursRules::r03OneAtATime)
                .on(crew().step(handsOn("A/mix", 10)).step(handsOn("B/mix", 10)),
                        aTimetable().work("A/mix", 100, 110, "ana").work("B/mix", start, start + 10, who))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"59, 0", "60, 0", "61, 1"})
    void should_not_work_more_than_the_most_a_day(int minutes, int findings) {
        check(HoursRules::r03MostADay)
                .on(aProblem().step(handsOn("A/mix", 10)).step(handsOn("B/mix", minutes - 10))
                        .person(aPerson("ana").onShift(0, 2880).atMostADay(60)),
                        aTimetable().work("A/mix", 100, 110, "ana").work("B/mix", 200, 200 + minutes - 10, "ana"))
                .costs(findings);
    }

    @Test
    void should_count_each_calendar_day_by_itself() {
        // starts at noon of Monday: midnight is minute 720
        check(HoursRules::r03MostADay)
                .on(aProblem().startingAt(720).step(handsOn("A/mix", 120)).person(aPerson("ana").onShift(0, 2880).atMostADay(60)),
                        aTimetable().work("A/mix", 660, 780, "ana"))
                .costs(0);
        check(HoursRules::r03MostADay)
                .on(aProblem().startingAt(720).step(handsOn("A/mix", 120)).person(aPerson("ana").onShift(0, 2880).atMostADay(60)),
                        aTimetable().work("A/mix", 659, 779, "ana"))
                .costs(1)
                .because(new Cause(List.of(), "ana", new Span(-720, 720), "ana works 61 min in one day; 60 are the most"));
    }

    @ParameterizedTest
    @CsvSource({"A/bake, B/bake, 5, 0", "A/bake, B/bake, 4, 1", "A/chill, B/chill, 9, 1", "A/chill, B/chill, 10, 0"})
    void should_count_pans_that_go_in_together_once(String one, String other, int most, int findings) {
        check(HoursRules::r03MostADay)
                .on(aProblem().step(resting("A/bake", 30).bakesAt(180).putIn(5)).step(resting("B/bake", 30).bakesAt(180).putIn(5))
                        .step(resting("A/chill", 30).putIn(5)).step(resting("B/chill", 30).putIn(5))
                        .oven(anOven("deck")).person(aPerson("ana").onShift(0, 2880).atMostADay(most)),
                        aTimetable().step(one, 100, 135).inOven(one.endsWith("bake") ? "deck" : "").putIn("ana", 5)
                                .step(other, 100, 135).inOven(one.endsWith("bake") ? "deck" : "").putIn("ana", 5))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 300, 1", "100, 300, 0", "100, 301, 1", "150, 250, 0"})
    void should_watch_an_oven_that_is_on(int from, int until, int findings) {
        check(HoursRules::r05OvenWatched)
                .on(aProblem().oven(anOven("deck")).person(aPerson("ana").onShift(100, 210).onBreak(150, 160))
                        .person(aPerson("ben").onShift(200, 300)), aTimetable().run("deck", 180, from, from + 20, until))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"149, 1", "150, 0"})
    void should_not_watch_from_the_road(int benUntil, int findings) {
        check(HoursRules::r05OvenWatched)
                .on(aProblem().oven(anOven("deck")).step(handsOn("A/deliver", 40).away())
                        .person(aPerson("ana").onShift(100, 300)).person(aPerson("ben").onShift(110, benUntil)),
                        aTimetable().work("A/deliver", 110, 150, "ana").run("deck", 180, 100, 120, 300))
                .costs(findings);
    }

    @Test
    void should_find_nobody_at_all() {
        check(HoursRules::r05OvenWatched)
                .on(aProblem().oven(anOven("deck")), aTimetable().run("deck", 180, 100, 120, 300))
                .costs(1)
                .because(new Cause(List.of(), "deck", new Span(100, 300), "the oven is on and nobody is in the kitchen"));
    }

    @ParameterizedTest
    @CsvSource({"200, 0", "201, 1"})
    void should_watch_a_step_that_needs_it(int end, int findings) {
        check(HoursRules::r05StepWatched)
                .on(aProblem().step(resting("A/boil", 20).presence()).step(resting("A/cool", 20))
                        .person(aPerson("ana").onShift(100, 200)),
                        aTimetable().step("A/boil", 150, end).step("A/cool", 190, 400))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"49, 1", "50, 0", "51, 0"})
    void should_not_start_before_the_earliest(int start, int findings) {
        check(HoursRules::r14Earliest)
                .on(aProblem().step(resting("A/cool", 10).notBefore(50)), aTimetable().step("A/cool", start, start + 10))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "0, 0"})
    void should_not_start_before_the_problem(int start, int findings) {
        check(HoursRules::r14Earliest)
                .on(aProblem().step(resting("A/cool", 10).notBefore(-100)), aTimetable().step("A/cool", start, 10))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"499, 0", "500, 0", "501, 1"})
    void should_end_by_the_horizon(int end, int findings) {
        check(HoursRules::r14Horizon)
                .on(aProblem().horizon(500).step(resting("A/cool", 10)), aTimetable().step("A/cool", 400, end))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "190, 0", "191, 1"})
    void should_work_while_open(int start, int findings) {
        check(HoursRules::r14WorkWhenOpen)
                .on(crew().open(100, 150).open(150, 200).step(handsOn("A/mix", 10)),
                        aTimetable().work("A/mix", start, start + 10, "ana"))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "195, 0", "196, 1"})
    void should_touch_while_open(int start, int findings) {
        check(HoursRules::r14TouchWhenOpen)
                .on(crew().open(100, 200).step(resting("A/chill", 10).putIn(5)),
                        aTimetable().step("A/chill", start, 400).putIn("ana", 5))
                .costs(findings);
    }

    private static ProblemBuilder crew() {
        return aProblem().person(aPerson("ana").onShift(0, 2880)).person(aPerson("ben").onShift(0, 2880));
    }
}
