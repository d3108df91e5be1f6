package crumbclock.rules;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.problem.Weights;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W03 and W04. */
class PeopleWishesTest {

    /** 2 a spread minute, 3 an odd one, 7 an uneven one; 5 and 3 for changes, 30 for another finisher; 7:00 to 22:00. */
    private static final Weights WEIGHTS =
            new Weights(100, 5000, 100_000_000, 4, 1, 2, 3, 7, 5, 3, 30, 60, 1, 15, 0, 420, 1320, 2, 20);

    @ParameterizedTest
    @CsvSource({"510, 60", "600, 240"})
    void should_wish_for_a_short_day(int coatStart, long points) {
        check(PeopleWishes::w03Spread)
                .on(crew(), aTimetable().work("A/mix", 490, 500, "ana").work("A/coat", coatStart, coatStart + 10, "ana"))
                .costs(points);
    }

    @Test
    void should_count_touches_and_each_day_by_itself() {
        check(PeopleWishes::w03Spread).on(crew(), aTimetable().work("A/mix", 490, 500, "ana")
                .step("A/chill", 600, 900).putIn("ana", 5)).costs(2 * 115)
                .because(new Cause(List.of(), "ana", new Span(490, 605), "ana is busy over 115 min of a day"));
        check(PeopleWishes::w03Spread).on(crew(), aTimetable().work("A/mix", 1430, 1450, "ana")).costs(2 * 20);
        check(PeopleWishes::w03Spread).on(crew(), aTimetable().work("A/mix", 490, 500, "ana")
                .work("A/coat", 1930, 1940, "ana")).costs(2 * 20);
        check(PeopleWishes::w03Spread).on(crew(), aTimetable().work("A/mix", 490, 500, "ana")
                .work("A/coat", 600, 610, "ben")).costs(2 * 20);
    }

    @ParameterizedTest
    @CsvSource({"409, 419, 30", "410, 420, 30", "415, 425, 15", "420, 430, 0", "1310, 1320, 0", "1315, 1325, 15",
        "1435, 1445, 30", "1860, 1870, 0"})
    void should_wish_for_ordinary_hours(int start, int end, long points) {
        check(PeopleWishes::w03OddHours).on(crew(), aTimetable().work("A/mix", start, end, "ana")).costs(points);
    }

    @Test
    void should_not_mind_touches_at_odd_hours() {
        check(PeopleWishes::w03OddHours)
                .on(crew(), aTimetable().step("A/chill", 300, 900).putIn("ana", 5)).costs(0);
        check(PeopleWishes::w03OddHours).on(crew(), aTimetable().work("A/mix", 415, 425, "ana"))
                .because(new Cause(List.of("A/mix"), "ana", new Span(415, 425),
                        "ana works 5 early or late minutes on A/mix"));
    }

    @ParameterizedTest
    @CsvSource({"10, 0", "9, 7", "11, 7", "0, 70"})
    void should_wish_for_even_hours(int benMinutes, long points) {
        // cleo has no shift, so that she does not count
        var timetable = aTimetable().work("A/mix", 500, 510, "ana");
        if (benMinutes > 0) {
            timetable.work("A/coat", 500, 500 + benMinutes, "ben");
        }

        check(PeopleWishes::w03Uneven).on(crew().person(aPerson("cleo")), timetable).costs(points);
    }

    @Test
    void should_wish_for_one_kind_of_work_at_a_time() {
        check(PeopleWishes::w04WorkChange).on(crew(), aTimetable().work("A/mix", 500, 510, "ana")
                .work("B/mix", 600, 610, "ana")).costs(0);
        check(PeopleWishes::w04WorkChange).on(crew(), aTimetable().work("A/mix", 500, 510, "ana")
                .work("A/coat", 600, 610, "ana")).costs(5)
                .because(new Cause(List.of("A/mix", "A/coat"), "ana", new Span(600, 610),
                        "ana goes from A/mix on to another kind of work, A/coat"));
        check(PeopleWishes::w04WorkChange).on(crew(), aTimetable().work("A/mix", 500, 510, "ana")
                .work("A/coat", 600, 610, "ben")).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"1430, 3", "1440, 0"})
    void should_change_freely_over_night(int start, long points) {
        check(PeopleWishes::w04CakeChange).on(crew(), aTimetable().work("A/mix", 500, 510, "ana")
                .work("B/mix", start, start + 10, "ana")).costs(points);
    }

    @Test
    void should_wish_for_one_cake_at_a_time() {
        check(PeopleWishes::w04CakeChange).on(crew(), aTimetable().work("A/mix", 500, 510, "ana")
                .work("A/coat", 600, 610, "ana")).costs(0);
        check(PeopleWishes::w04CakeChange).on(crew(), aTimetable()
                .step("A/coat", 500, 630).by("ana", new Span(500, 510), new Span(620, 630))
                .work("B/mix", 520, 530, "ana")).costs(6);
        check(PeopleWishes::w04CakeChange).on(crew(), aTimetable()
                .step("A/coat", 500, 630).by("ana", new Span(500, 510), new Span(620, 630))).costs(0);
    }

    @ParameterizedTest
    @CsvSource({"ana, 0", "ben, 30"})
    void should_wish_for_one_finisher(String second, long points) {
        check(PeopleWishes::w04ExtraFinisher).on(crew(), aTimetable().work("A/coat", 500, 510, "ana")
                .work("A/pipe", 600, 610, second).work("A/mix", 700, 710, "ben")).costs(points);
    }

    private static ProblemBuilder crew() {
        return aProblem().weights(WEIGHTS).oven(anOven("deck"))
                .person(aPerson("ana").onShift(0, 2880)).person(aPerson("ben").onShift(0, 2880))
                .step(handsOn("A/mix", 10).kind("mixing")).step(handsOn("B/mix", 10).kind("mixing"))
                .step(handsOn("A/coat", 10).kind("coating").finish()).step(handsOn("A/pipe", 10).kind("piping").finish())
                .step(resting("A/chill", 10).putIn(5));
    }
}
