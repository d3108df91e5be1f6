package crumbclock.app.pace;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.StepRow;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which records count, and for how many minutes. */
class RealMinutesTest extends CoatedCakes {

    @Test
    void should_leave_out_what_came_to_nothing() {
        took(1, 40);
        line(at(1) + 40, cake(1), DayWord.SPOILED);
        took(2, 20);
        line(at(2) + 30, cake(2), DayWord.REDO);
        line(at(2) + 31, cake(2), DayWord.STARTED);
        line(at(2) + 51, cake(2), DayWord.DONE);

        assertThat(reasons()).containsExactly("C1/coat: what it made was spoiled", "C2/coat: it was done again");
        assertThat(coating().steps()).extracting(step -> step.realMinutes()).containsExactly(20);
    }

    @Test
    void should_leave_out_what_is_not_clear() {
        took(1, 20);
        line(at(1) + 30, cake(1), DayWord.STARTED);
        line(at(1) + 45, cake(1), DayWord.DONE);
        line(at(2), cake(2), DayWord.STARTED);
        line(at(3), cake(3), DayWord.DONE);
        line(at(4), cake(4), DayWord.SLOWER);
        took(5, 20);
        line(StepEvent.NO_TIME, cake(6), DayWord.STARTED);
        line(StepEvent.NO_TIME, cake(6), DayWord.DONE);
        line(at(5), cake(5), DayWord.SKIP);

        assertThat(reasons()).containsExactly("C1/coat: it is recorded twice with no \"redo\" between",
                "C1/coat: it is recorded twice with no \"redo\" between", "C2/coat: nobody wrote when it was done",
                "C5/coat: it is recorded as skipped");
        assertThat(learned().withoutStart()).isEqualTo(1);
        assertThat(learned().withoutTimes()).isEqualTo(1);
        assertThat(learned().seen()).isZero();
    }

    @Test
    void should_take_the_later_of_two_times() {
        took(1, 20);
        line(at(1) + 26, cake(1), DayWord.DONE);
        line(at(2) - 7, cake(2), DayWord.STARTED);
        took(2, 22);

        assertThat(coating().steps()).extracting(step -> step.realMinutes()).containsExactly(26, 22);
    }

    @Test
    void should_count_a_slower_step_by_its_times() {
        took(1, 30);
        line(at(1) + 10, cake(1), DayWord.SLOWER);

        assertThat(coating().steps()).extracting(step -> step.realMinutes()).containsExactly(30);
        assertThat(learned().withoutTimes()).isZero();
    }

    @Test
    void should_leave_out_what_the_kitchen_broke() {
        took(1, 20);
        took(2, 20);
        took(3, 20);
        kitchen.add(new KitchenEvent(9, KitchenEvent.Kind.POWER_CUT, "", new Span(at(1) + 19, at(1) + 25)));
        kitchen.add(new KitchenEvent(9, KitchenEvent.Kind.PERSON_AWAY, "ana", new Span(at(2) + 5, at(2) + 6)));
        // touches the third at its end only, and an oven is nothing to coating
        kitchen.add(new KitchenEvent(9, KitchenEvent.Kind.POWER_CUT, "", new Span(at(3) + 20, at(3) + 25)));
        kitchen.add(new KitchenEvent(9, KitchenEvent.Kind.OVEN_DEAD, "oven", new Span(0, 900)));

        assertThat(reasons()).containsExactly("C1/coat: the power was cut", "C2/coat: ana was away");
        assertThat(coating().steps()).hasSize(1);
    }

    @Test
    void should_leave_out_two_steps_of_one_person_at_one_time() {
        line(at(1), cake(1), DayWord.STARTED);
        line(at(2), cake(2), DayWord.STARTED);
        line(at(2) + 3, cake(1), DayWord.DONE);
        line(at(2) + 30, cake(2), DayWord.DONE);
        line(at(2) + 28, cake(3), DayWord.STARTED);
        line(at(3) + 20, cake(3), DayWord.DONE);

        // three minutes shared are too many, two are a matter of writing one thing down after the other
        assertThat(reasons()).containsExactly("C1/coat: at the same time ana is recorded on C2/coat",
                "C2/coat: at the same time ana is recorded on C1/coat");
        assertThat(coating().steps()).extracting(step -> step.stepId()).containsExactly(cake(3));
    }

    @Test
    void should_leave_out_a_step_with_a_break_in_it() {
        ana.onBreak(at(1) + 10, at(1) + 15);
        took(1, 25);

        assertThat(reasons()).containsExactly("C1/coat: ana had a break in it, and nobody wrote whether it was taken");
    }

    @Test
    void should_not_count_breaks_and_nights_of_work_that_is_put_down() {
        ana.onBreak(560, 570);
        var problem = aProblem().person(ana).step(handsOn("A/write", 60).kind("writing").mayPutDown())
                .step(handsOn("B/coat", 20).kind("coating").mayPutDown()).build();
        var plan = aTimetable().step("A/write", 540, 910).by("ana", new Span(540, 560), new Span(570, 600), new Span(900, 910))
                .work("B/coat", 1380, 1400, "ana").build();
        line(540, "A/write", DayWord.STARTED);
        line(925, "A/write", DayWord.DONE);
        // stays ten minutes longer than the shift
        line(1380, "B/coat", DayWord.STARTED);
        line(1410, "B/coat", DayWord.DONE);

        // 20 before the break, 30 after it, 25 on the next day
        assertThat(learned(problem, plan).paces()).extracting(PaceRow::workKind, row -> row.steps().get(0).realMinutes())
                .containsExactly(tuple("coating", 30), tuple("writing", 75));
    }

    @Test
    void should_leave_out_work_that_is_put_down_for_other_work() {
        var problem = aProblem().person(ana).step(handsOn("A/write", 60).kind("writing").mayPutDown())
                .step(handsOn("B/coat", 20).kind("coating")).build();
        var plan = aTimetable().step("A/write", 0, 80).by("ana", new Span(0, 30), new Span(50, 80)).work("B/coat", 30, 50, "ana").build();
        line(0, "A/write", DayWord.STARTED);
        line(80, "A/write", DayWord.DONE);

        assertThat(learned(problem, plan).leftOut()).extracting(one -> one.reason())
                .containsExactly("it is put down for other work, and nobody wrote for how long");
    }

    @Test
    void should_never_scale_a_person_by_waits_by_work_of_several_or_by_a_few_minutes() {
        var problem = aProblem().person(ana).person(aPerson("ben").onShift(0, 600))
                .step(resting("A/bake", 30, 40)).step(handsOn("A/stack", 20).kind("stacking").people(2)).step(handsOn("A/dot", 4).kind("piping"))
                .step(handsOn("A/odd", 20)).build();
        var plan = aTimetable().step("A/bake", 0, 30).work("A/stack", 100, 120, "ana").by("ben", new Span(100, 120))
                .work("A/dot", 200, 204, "ana").work("A/odd", 300, 320, "ana").build();
        for (var step : plan.steps()) {
            line(step.start(), step.stepId(), DayWord.STARTED);
            line(step.end() + 10, step.stepId(), DayWord.DONE);
        }

        var report = learned(problem, plan);

        assertThat(report.paces()).isEmpty();
        assertThat(report.steps()).extracting(StepRow::handsOn).containsExactly(true, true, true, false);
        assertThat(report.steps().get(3).minutes().median()).isEqualTo(40);
    }

    @Test
    void should_leave_out_what_stood_in_a_dead_oven_or_a_warm_fridge() {
        var problem = aProblem().person(ana).step(resting("A/bake", 30, 40)).step(resting("A/chill", 30, 40)).build();
        var plan = aTimetable().step("A/bake", 0, 30).inOven("oven").step("A/chill", 40, 80).onShelf("fridge", "top", 0, 0).build();
        for (var step : plan.steps()) {
            line(step.start(), step.stepId(), DayWord.STARTED);
            line(step.end(), step.stepId(), DayWord.DONE);
        }
        kitchen.add(new KitchenEvent(1, KitchenEvent.Kind.OVEN_DEAD, "oven", new Span(10, 20)));
        kitchen.add(new KitchenEvent(2, KitchenEvent.Kind.STORE_WARM, "fridge", new Span(50, 60)));

        assertThat(learned(problem, plan).leftOut()).extracting(one -> one.reason()).containsExactly("oven was dead", "fridge was warm");
    }

    @Test
    void should_tell_people_whom_the_kitchen_does_not_know() {
        took(1, 20);
        var report = LearnPaces.learn(aProblem().person(aPerson("ben").onShift(0, 600)).build().kitchen(),
                List.of(new FinishedDay(problem(), plan().build(), new DayLog(steps, List.of(), List.of()))));

        assertThat(report.leftOut()).extracting(one -> one.reason()).containsExactly("ana is not one of this kitchen's people");
        assertThat(report.paces()).isEmpty();
    }
}
