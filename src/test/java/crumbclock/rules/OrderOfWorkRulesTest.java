package crumbclock.rules;

import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderOfWorkRulesTest {

    @ParameterizedTest
    @CsvSource({"129, 1", "130, 0", "131, 0"})
    void should_keep_the_least_wait(int coatStart, int findings) {
        check(OrderOfWorkRules::r01LeastWait)
                .on(bakeThenCoat(30, 60), aTimetable().step("A/bake", 50, 100).step("A/coat", coatStart, 200))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"94, 1", "95, 0"})
    void should_let_a_negative_least_wait_begin_early(int coatStart, int findings) {
        check(OrderOfWorkRules::r01LeastWait)
                .on(bakeThenCoat(-5, 60), aTimetable().step("A/bake", 50, 100).step("A/coat", coatStart, 200))
                .costs(findings);
    }

    @Test
    void should_say_how_long_was_waited() {
        check(OrderOfWorkRules::r01LeastWait)
                .on(bakeThenCoat(30, 60), aTimetable().step("A/bake", 50, 100).step("A/coat", 129, 200))
                .because(new Cause(List.of("A/bake", "A/coat"), "", new Span(100, 129),
                        "A/coat starts 29 min after the end of A/bake; at least 30 are needed"));
        check(OrderOfWorkRules::r02MostWait)
                .on(bakeThenCoat(30, 60), aTimetable().step("A/bake", 50, 100).step("A/coat", 161, 200))
                .because(new Cause(List.of("A/bake", "A/coat"), "", new Span(100, 161),
                        "A/coat starts 61 min after the end of A/bake; at most 60 are allowed"));
    }

    @ParameterizedTest
    @CsvSource({"159, 0", "160, 0", "161, 1"})
    void should_keep_the_most_wait(int coatStart, int findings) {
        check(OrderOfWorkRules::r02MostWait)
                .on(bakeThenCoat(30, 60), aTimetable().step("A/bake", 50, 100).step("A/coat", coatStart, 200))
                .costs(findings);
    }

    @Test
    void should_wait_for_ever_without_a_most() {
        check(OrderOfWorkRules::r02MostWait)
                .on(bakeThenCoat(30, Wait.NO_MOST), aTimetable().step("A/bake", 50, 100).step("A/coat", 2800, 2810))
                .costs(0);
    }

    @ParameterizedTest
    @CsvSource({"146, 1", "147, 0", "148, 0"})
    void should_rest_long_enough_between_the_touches(int end, int findings) {
        check(OrderOfWorkRules::r01LeastRest)
                .on(aProblem().step(resting("A/chill", 40, 60).putIn(5).takeOut(2)), aTimetable().step("A/chill", 100, end))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"166, 0", "167, 0", "168, 1"})
    void should_not_rest_too_long_between_the_touches(int end, int findings) {
        check(OrderOfWorkRules::r02MostRest)
                .on(aProblem().step(resting("A/chill", 40, 60).putIn(5).takeOut(2)), aTimetable().step("A/chill", 100, end))
                .costs(findings);
    }

    @Test
    void should_rest_for_ever_without_a_most() {
        check(OrderOfWorkRules::r02MostRest)
                .on(aProblem().step(resting("A/chill", 40)), aTimetable().step("A/chill", 100, 2800))
                .costs(0);
    }

    private static ProblemBuilder bakeThenCoat(int least, int most) {
        return aProblem().step(resting("A/bake", 30)).step(handsOn("A/coat", 10)).wait("A/bake", "A/coat", least, most);
    }
}
