package crumbclock.rules;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.problem.KeptStep;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** W08 with 2 points a minute and 20 for other hands; people know that A is mixed at 1000 by ana and chills from 1100. */
class KeptWishesTest {

    @ParameterizedTest
    @CsvSource({"1000, 0", "1001, 2", "999, 2", "1239, 478", "1240, 480", "1241, 480", "760, 480", "759, 480"})
    void should_wish_for_starts_as_known_up_to_four_hours(int start, long pointsWhenFar) {
        // a start more than a day after now counts once
        check(KeptWishes::w08Moved).on(known(-2000), aTimetable().step("A/mix", start, start + 10)).costs(pointsWhenFar);
    }

    @ParameterizedTest
    @CsvSource({"881, 40", "880, 20", "700, 20", "-439, 20", "-440, 10", "-441, 10", "1500, 40"})
    void should_mind_a_move_more_the_nearer_it_is(int now, long points) {
        check(KeptWishes::w08Moved).on(known(now), aTimetable().step("A/mix", 1005, 1015)).costs(points);
    }

    @Test
    void should_take_the_nearer_of_both_starts() {
        // known at 1000, two hours and more after 850; now at 960, less than two hours
        check(KeptWishes::w08Moved).on(known(850), aTimetable().step("A/mix", 960, 970)).costs(40 * 4 * 2)
                .because(new Cause(List.of("A/mix"), "", new Span(960, 1000),
                        "A/mix begins 40 min earlier than people know"));
    }

    @Test
    void should_not_mind_what_nobody_knows_of_or_what_is_not_placed() {
        check(KeptWishes::w08Moved).on(known(0), aTimetable().step("B/mix", 5, 15)).costs(0);
        check(KeptWishes::w08OtherHands).on(known(0), aTimetable().step("B/mix", 5, 15).by("ben")).costs(0);
        check(KeptWishes::w08OtherTouch).on(known(0), aTimetable().step("B/mix", 5, 15)).costs(0);
    }

    @Test
    void should_wish_for_the_same_hands() {
        check(KeptWishes::w08OtherHands).on(known(0), aTimetable().step("A/mix", 1000, 1010).by("ana")).costs(0);
        check(KeptWishes::w08OtherHands).on(known(0), aTimetable().step("A/mix", 1000, 1010).by("ben")).costs(40)
                .because(new Cause(List.of("A/mix"), "", new Span(1000, 1010), "1 who work on A/mix did not know of it"));
        check(KeptWishes::w08OtherHands).on(known(990), aTimetable().step("A/mix", 1000, 1010).by("ana").by("ben"))
                .costs(80);
    }

    @Test
    void should_wish_for_the_same_hands_at_touches() {
        check(KeptWishes::w08OtherTouch).on(known(0), chilled("ana", "ben")).costs(0);
        check(KeptWishes::w08OtherTouch).on(known(0), chilled("ana", "ana")).costs(40)
                .because(new Cause(List.of("A/chill"), "ana", new Span(1129, 1130),
                        "ana did not know of a touch of A/chill"));
        check(KeptWishes::w08OtherTouch).on(known(0), chilled("ben", "ana")).costs(80);
    }

    private static TimetableBuilder chilled(String in, String out) {
        return aTimetable().step("A/chill", 1100, 1130).touch("A/chill", TouchEnd.PUT_IN, in, 1100, 1101)
                .touch("A/chill", TouchEnd.TAKE_OUT, out, 1129, 1130);
    }

    private static ProblemBuilder known(int now) {
        return aProblem().person(aPerson("ana")).person(aPerson("ben"))
                .step(handsOn("A/mix", 10)).step(handsOn("B/mix", 10)).step(resting("A/chill", 10))
                .kept(now, new KeptStep("A/mix", 1000, List.of("ana"), "", ""),
                        new KeptStep("A/chill", 1100, List.of(), "ana", "ben"));
    }
}
