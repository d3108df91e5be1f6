package crumbclock.app.replan;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.Dice;
import crumbclock.fixture.RandomKitchens;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A plan made during the day, taken up again: by the audit, and by planning again later. */
class ReplanAgainTest {

    private static final SearchLimits SHORT = SearchLimits.ofSteps(1, 60);

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_make_the_same_problem_again_from_what_the_plan_says(long seed) {
        // given
        Problem problem = RandomKitchens.of(seed);
        Plan plan = ReplanTest.planned(problem, seed);
        Dice dice = new Dice(seed + 1);
        int now = dice.upTo(problem.clock().horizonMinutes() / 2);
        DayLog log = ReplanTest.day(problem, plan, now, dice);

        // when
        Replanned made = Replan.replan(problem, plan, log, now, SHORT, SearchListener.SILENT);
        DayAudit audited = DayAudit.audit(problem, made.state(), made.plan());

        // then
        assertThat(DayProblem.whole(problem, made.state(), made.plan().timetable())).as("seed %d", seed).isEqualTo(made.problem());
        assertThat(audited.plan().cost()).isEqualTo(made.plan().cost());
        assertThat(audited.plan().findings()).isEqualTo(made.plan().findings());
        assertThat(audited.plan().bound()).as("seed %d", seed).isEqualTo(made.plan().bound());
        assertThat(audited.inFact()).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(made.news().inFact());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_plan_on_soundly_from_a_plan_made_during_the_day(long seed) {
        // given a plan made during the day, and some more hours with the same day file and more lines
        Problem problem = RandomKitchens.of(seed);
        Plan plan = ReplanTest.planned(problem, seed);
        Dice dice = new Dice(seed + 1);
        int now = dice.upTo(problem.clock().horizonMinutes() / 2);
        DayLog log = ReplanTest.day(problem, plan, now, dice);
        Replanned first = Replan.replan(problem, plan, log, now, SHORT, SearchListener.SILENT);
        Problem base = DayProblem.again(problem, first.state().again());
        int later = Math.min(problem.clock().horizonMinutes() - 1, now + 30 + dice.upTo(120));
        List<StepEvent> lines = new ArrayList<>(log.steps());
        for (PlacedStep step : first.plan().timetable().steps()) {
            if (step.start() >= now && step.end() <= later && step.end() > 0 && dice.onceIn(2)) {
                lines.add(new StepEvent(200 + lines.size(), step.end(), List.of(step.stepId()), DayWord.DONE, 0));
            }
        }

        // when
        Replanned second = Replan.replan(base, first.plan(), first.state(), new DayLog(lines, log.kitchen(), List.of()), later, SHORT,
                SearchListener.SILENT);

        // then
        assertThat(second.plan().findings()).filteredOn(finding -> !second.news().inFact().contains(finding))
                .as("seed %d, %d then %d, %s", seed, now, later, log).isEmpty();
        assertThat(DayProblem.whole(problem, second.state(), second.plan().timetable())).as("seed %d", seed).isEqualTo(second.problem());
        assertThat(DayAudit.audit(problem, second.state(), second.plan()).plan().cost()).isEqualTo(second.plan().cost());
    }

    @Test
    void should_have_made_some_batches_again() {
        // else the tests above would look at nothing of the kind
        long again = seeds().filter(seed -> {
            Problem problem = RandomKitchens.of(seed);
            Plan plan = ReplanTest.planned(problem, seed);
            Dice dice = new Dice(seed + 1);
            int now = dice.upTo(problem.clock().horizonMinutes() / 2);
            return !Replan.replan(problem, plan, ReplanTest.day(problem, plan, now, dice), now, SHORT, SearchListener.SILENT).state().again().isEmpty();
        }).count();

        assertThat(again).isPositive();
    }

    private static Problem twoCakesOfOneBatch() {
        return aProblem().horizon(900).person(aPerson("ana").onShift(0, 900)).batch("X")
                .step(handsOn("X/mix", 20)).step(handsOn("A/fill", 20)).step(handsOn("A/coat", 20)).step(handsOn("B/fill", 20)).step(handsOn("B/coat", 20))
                .wait("X/mix", "A/fill", 0, 800).wait("A/fill", "A/coat", 0, 800).wait("X/mix", "B/fill", 0, 800).wait("B/fill", "B/coat", 0, 800)
                .order(anOrder("OA").cake("A", "A/coat", "X").setAsideBy(600)).order(anOrder("OB").cake("B", "B/coat", "X").setAsideBy(700)).build();
    }

    private static Plan planOfTwo() {
        var have = aTimetable().work("X/mix", 0, 20, "ana").work("A/fill", 20, 40, "ana").work("A/coat", 40, 60, "ana").work("B/fill", 60, 80, "ana")
                .work("B/coat", 80, 100, "ana").made("OA", 60, 60, 540, 0).made("OB", 100, 100, 600, 0).build();
        return new Plan("known", have, List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1));
    }

    private static StepEvent line(int minute, String step, DayWord word) {
        return new StepEvent(minute, minute, List.of(step), word, 0);
    }

    /** What was written down of a cake before it was dropped is still in the file, and says nothing of the cake that is made instead. */
    @Test
    void should_count_nothing_of_what_was_lost_when_planning_a_second_time() {
        // given
        Problem problem = twoCakesOfOneBatch();
        List<StepEvent> lines = new ArrayList<>(List.of(line(20, "X/mix", DayWord.DONE), line(40, "A/fill", DayWord.DONE), line(45, "A/fill", DayWord.SPOILED)));
        Replanned first = Replan.replan(problem, planOfTwo(), new DayLog(lines, List.of(), List.of()), 46, SHORT, SearchListener.SILENT);
        assertThat(first.state().again()).containsExactly(new BatchAgain("X", List.of("A")));
        int mixed = start(first, "X-again/mix");
        int filled = start(first, "A/fill");
        assertThat(mixed).isGreaterThanOrEqualTo(46);
        assertThat(filled).isGreaterThanOrEqualTo(mixed + 20);

        // when: nothing more is written, and the new bowl is just mixed
        Problem base = DayProblem.again(problem, first.state().again());
        Replanned second = Replan.replan(base, first.plan(), first.state(), new DayLog(lines, List.of(), List.of()), mixed + 20, SHORT, SearchListener.SILENT);

        // then
        assertThat(second.plan().findings()).isEmpty();
        assertThat(second.state().again()).isEqualTo(first.state().again());
        assertThat(start(second, "A/fill")).isEqualTo(filled).isGreaterThanOrEqualTo(mixed + 20);
        assertThat(second.plan().timetable().outcomes()).allMatch(Outcome::possible);

        // and when the new filling is written down, it counts
        lines.add(line(filled + 25, "A/fill", DayWord.DONE));
        Replanned third = Replan.replan(base, second.plan(), second.state(), new DayLog(lines, List.of(), List.of()), filled + 30, SHORT, SearchListener.SILENT);
        assertThat(third.plan().timetable().steps()).filteredOn(step -> step.stepId().equals("A/fill")).extracting(PlacedStep::end)
                .containsExactly(filled + 25);
    }

    private static int start(Replanned made, String step) {
        return made.plan().timetable().steps().stream().filter(one -> one.stepId().equals(step)).findFirst().orElseThrow().start();
    }

    @Test
    void should_say_what_was_skipped_slower_and_away() {
        Problem problem = twoCakesOfOneBatch();
        var log = new DayLog(List.of(new StepEvent(1, 10, List.of("B/fill"), DayWord.SLOWER, 15), line(10, "A/coat", DayWord.SKIP)),
                List.of(new KitchenEvent(7, KitchenEvent.Kind.PERSON_AWAY, "ana", new Span(30, 50))), List.of());

        Replanned made = Replan.replan(problem, planOfTwo(), log, 15, SHORT, SearchListener.SILENT);

        assertThat(made.state().slower()).containsExactly(Map.entry("B/fill", 15));
        assertThat(made.state().skipped()).isEqualTo(Set.of("A/coat"));
        assertThat(made.state().kitchen()).containsExactly(new KitchenEvent(0, KitchenEvent.Kind.PERSON_AWAY, "ana", new Span(30, 50)));
        assertThat(DayProblem.whole(problem, made.state(), made.plan().timetable())).isEqualTo(made.problem());
    }
}
