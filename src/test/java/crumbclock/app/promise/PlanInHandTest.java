package crumbclock.app.promise;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.app.replan.DayAudit;
import crumbclock.app.replan.Replan;
import crumbclock.app.replan.Replanned;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.PersonBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.search.SearchListener;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that people have of another problem than the one in its file, or of another day than was planned. */
class PlanInHandTest {

    private static final int NOW = 46;

    /** Ana fills and coats A and B from one bowl. */
    private static ProblemBuilder twoOfOneBowl(PersonBuilder ana, int coating) {
        return aProblem().horizon(900).person(ana).batch("X").step(handsOn("X/mix", 20)).step(handsOn("A/fill", 20)).step(handsOn("A/coat", coating))
                .step(handsOn("B/fill", 20)).step(handsOn("B/coat", 20)).wait("X/mix", "A/fill", 0, 800).wait("A/fill", "A/coat", 0, 800)
                .wait("X/mix", "B/fill", 0, 800).wait("B/fill", "B/coat", 0, 800)
                .order(anOrder("OA").cake("A", "A/coat", "X").setAsideBy(600)).order(anOrder("OB").cake("B", "B/coat", "X").setAsideBy(700));
    }

    private static ProblemBuilder twoOfOneBowl() {
        return twoOfOneBowl(aPerson("ana").onShift(0, 900), 20);
    }

    /** And one more that takes of the same bowl. */
    private static Problem andC(ProblemBuilder base) {
        return base.step(handsOn("C/fill", 20)).wait("X/mix", "C/fill", 0, 800).order(anOrder("OC").cake("C", "C/fill", "X").setAsideBy(300)).build();
    }

    private static Plan plan() {
        return OneMore.plan(aTimetable().work("X/mix", 0, 20, "ana").work("A/fill", 20, 40, "ana").work("A/coat", 40, 60, "ana")
                .work("B/fill", 60, 80, "ana").work("B/coat", 80, 100, "ana").made("OA", 60, 60, 540, 0).made("OB", 100, 100, 600, 0).build());
    }

    /** A is spoiled at 45: the bowl is mixed again for it. */
    private static Replanned madeAgain() {
        var lines = List.of(line(20, "X/mix", DayWord.DONE), line(40, "A/fill", DayWord.DONE), line(45, "A/fill", DayWord.SPOILED));
        return Replan.replan(twoOfOneBowl().build(), plan(), new DayLog(lines, List.of(), List.of()), NOW, OneMore.SHORT, SearchListener.SILENT);
    }

    private static StepEvent line(int minute, String step, DayWord word) {
        return new StepEvent(minute, minute, List.of(step), word, 0);
    }

    private static PromiseAnswer answer(PlanInHand have, Problem asked, int now) {
        return PromiseOrder.answer(Question.about(have, asked, "OC", now, List.of()), OneMore.SHORT, new PromiseListener() {
            @Override
            public void looking(String what, int done, int about) {
                assertThat(done).isLessThanOrEqualTo(about);
            }

            @Override
            public boolean stopAsked() {
                return false;
            }
        });
    }

    private static PlacedStep step(Plan plan, String id) {
        return plan.timetable().steps().stream().filter(step -> step.stepId().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void should_go_on_from_a_plan_that_makes_a_batch_a_second_time() {
        // given
        Replanned again = madeAgain();
        assertThat(again.state().again()).containsExactly(new BatchAgain("X", List.of("A")));
        assertThat(PlanInHand.broken(twoOfOneBowl().build(), again.plan(), again.state())).isEmpty();
        var have = PlanInHand.fitting(twoOfOneBowl().build(), again.plan(), again.state());
        Problem asked = andC(twoOfOneBowl());

        // when
        PromiseAnswer answer = answer(have, asked, NOW);

        // then
        assertThat(have.problem()).isEqualTo(again.problem());
        assertThat(answer.wished()).isPresent();
        assertThat(answer.plans()).isNotEmpty().allSatisfy((name, promised) -> {
            assertThat(promised.plan().timetable().steps()).extracting(PlacedStep::stepId).contains("X-again/mix", "A/fill", "C/fill");
            assertThat(step(promised.plan(), "B/fill").start()).isGreaterThanOrEqualTo(NOW);
        });
    }

    @Test
    void should_take_the_new_cake_from_the_bowl_that_is_mixed_last() {
        Replanned again = madeAgain();

        Problem day = PlanInHand.fitting(twoOfOneBowl().build(), again.plan(), again.state()).with(andC(twoOfOneBowl()));

        assertThat(day.waits()).contains(new Wait("X-again/mix", "C/fill", 0, 800)).doesNotContain(new Wait("X/mix", "C/fill", 0, 800));
    }

    /** What is written beside a promised plan lets anybody come to the same cost again. */
    @Test
    void should_say_what_a_promised_plan_differs_in() {
        Replanned again = madeAgain();
        var have = PlanInHand.fitting(twoOfOneBowl().build(), again.plan(), again.state());
        Problem asked = andC(twoOfOneBowl());

        var wished = answer(have, asked, NOW).wished().orElseThrow();
        DayAudit audit = DayAudit.audit(asked, have.stateOf(wished), wished.plan());

        assertThat(audit.plan().findings()).isEqualTo(wished.plan().findings());
        assertThat(audit.plan().cost()).isEqualTo(wished.plan().cost());
    }

    @Test
    void should_change_a_plan_that_was_made_without_the_changes_as_little_as_it_must() {
        // given: Ana comes at 90 and not at 0
        Problem late = twoOfOneBowl(aPerson("ana").onShift(90, 900), 20).build();
        assertThat(PlanInHand.broken(late, plan(), DayState.NONE)).isNotEmpty();

        // when
        var have = PlanInHand.changed(twoOfOneBowl().build(), late, plan(), DayState.NONE, 0, OneMore.SHORT, SearchListener.SILENT).orElseThrow();

        // then
        assertThat(PlanInHand.broken(late, have.plan(), have.state())).isEmpty();
        assertThat(step(have.plan(), "X/mix").start()).isEqualTo(90);
        assertThat(have.state().known().steps()).extracting(known -> known.stepId()).containsExactly("X/mix", "A/fill", "A/coat", "B/fill", "B/coat");
        assertThat(answer(have, andC(twoOfOneBowl(aPerson("ana").onShift(90, 900), 20)), 0).wished()).isPresent();
    }

    @Test
    void should_know_nothing_any_more_of_a_step_that_is_another_one_now() {
        Problem longer = twoOfOneBowl(aPerson("ana").onShift(0, 900), 50).build();

        var have = PlanInHand.changed(twoOfOneBowl().build(), longer, plan(), DayState.NONE, 0, OneMore.SHORT, SearchListener.SILENT).orElseThrow();

        assertThat(have.state().known().steps()).extracting(known -> known.stepId()).containsExactly("X/mix", "A/fill", "B/fill", "B/coat");
        assertThat(PlanInHand.broken(longer, have.plan(), have.state())).isEmpty();
        assertThat(step(have.plan(), "A/coat").span().minutes()).isEqualTo(50);
    }

    @Test
    void should_drop_what_the_changed_problem_does_not_hold() {
        // given a plan that mixes a bowl again for A, and A is not wanted any more
        Replanned again = madeAgain();
        Problem onlyB = aProblem().horizon(900).person(aPerson("ana").onShift(0, 900)).batch("X").step(handsOn("X/mix", 20))
                .step(handsOn("B/fill", 20)).step(handsOn("B/coat", 20)).wait("X/mix", "B/fill", 0, 800).wait("B/fill", "B/coat", 0, 800)
                .order(anOrder("OB").cake("B", "B/coat", "X").setAsideBy(700)).build();

        var have = PlanInHand.changed(twoOfOneBowl().build(), onlyB, again.plan(), again.state(), NOW, OneMore.SHORT, SearchListener.SILENT).orElseThrow();

        assertThat(have.state().again()).isEmpty();
        assertThat(have.plan().timetable().steps()).extracting(PlacedStep::stepId).containsExactly("X/mix", "B/fill", "B/coat");
        assertThat(PlanInHand.broken(onlyB, have.plan(), have.state())).isEmpty();
    }
}
