package crumbclock.app.pace;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.PaceWord;
import crumbclock.domain.pace.StepRow;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.PersonBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One person who coats seven cakes of 20 minutes each, at 60, 120, 180 ... ; what is written down differs. */
class LearnPacesTest {

    private static final int CAKES = 7;
    private static final int PLAIN = 20;

    private final List<StepEvent> steps = new ArrayList<>();
    private final List<KitchenEvent> kitchen = new ArrayList<>();
    private final PersonBuilder ana = aPerson("ana").onShift(0, 600).onShift(900, 1400);

    private static String cake(int number) {
        return "C" + number + "/coat";
    }

    private static int at(int number) {
        return number * 60;
    }

    private Problem problem() {
        ProblemBuilder problem = aProblem().person(ana);
        for (int i = 1; i <= CAKES; i++) {
            problem.step(handsOn(cake(i), PLAIN).kind("coating"));
        }
        return problem.build();
    }

    private static TimetableBuilder plan() {
        var plan = aTimetable();
        for (int i = 1; i <= CAKES; i++) {
            plan.work(cake(i), at(i), at(i) + PLAIN, "ana");
        }
        return plan;
    }

    private void line(int minute, String step, DayWord word) {
        steps.add(new StepEvent(steps.size() + 1, minute, List.of(step), word, word == DayWord.SLOWER ? 10 : 0));
    }

    private void took(int number, int minutes) {
        line(at(number), cake(number), DayWord.STARTED);
        line(at(number) + minutes, cake(number), DayWord.DONE);
    }

    private PaceReport learned() {
        return learned(problem(), plan().build());
    }

    private PaceReport learned(Problem problem, Timetable timetable) {
        return LearnPaces.learn(problem.kitchen(), List.of(new FinishedDay(problem, timetable, new DayLog(steps, kitchen, List.of()))));
    }

    private PaceRow coating() {
        return learned().paces().stream().filter(row -> row.workKind().equals("coating")).findFirst().orElseThrow();
    }

    private List<String> reasons() {
        return learned().leftOut().stream().map(one -> one.stepId() + ": " + one.reason()).toList();
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1", "0.8, 2", "1.0, 3", "1.3, 4", "1.75, 5", "2.6, 6"})
    void should_find_the_factor_that_the_minutes_were_drawn_with(double factor, long seed) {
        // given: seven steps of 5 to 60 minutes
        var random = new Random(seed);
        ProblemBuilder problem = aProblem().person(ana);
        var plan = aTimetable();
        double rounding = 0;
        int minute = 0;
        for (int i = 1; i <= CAKES; i++) {
            int plain = 5 + random.nextInt(56);
            int real = (int) Math.round(plain * factor);
            problem.step(handsOn(cake(i), plain).kind("coating"));
            plan.work(cake(i), minute, minute + plain, "ana");
            line(minute, cake(i), DayWord.STARTED);
            line(minute + real, cake(i), DayWord.DONE);
            rounding = Math.max(rounding, 0.5 / plain);
            minute += 200;
        }

        // when
        var row = learned(problem.build(), plan.build()).paces().get(0);

        // then
        assertThat(row.seen().orElseThrow().seen()).isEqualTo(CAKES);
        assertThat(row.rounded()).as("seed %d", seed).isCloseTo(factor, within(rounding + 0.005));
    }

    @Test
    void should_hardly_move_for_one_absurd_record() {
        int[] minutes = {25, 26, 24, 25, 26, 24};
        for (int i = 1; i <= minutes.length; i++) {
            took(i, minutes[i - 1]);
        }
        double without = coating().rounded();

        took(CAKES, 480);

        assertThat(coating().seen().orElseThrow().seen()).isEqualTo(CAKES);
        assertThat(coating().rounded()).isCloseTo(without, within(0.01)).isCloseTo(1.25, within(0.01));
    }

    @Test
    void should_not_care_for_the_order_of_lines_and_days() {
        for (int i = 1; i <= CAKES; i++) {
            took(i, 20 + i);
        }
        line(at(3) + 40, cake(3), DayWord.SPOILED);
        line(at(3) + 50, cake(3), DayWord.STARTED);
        line(at(4) - 1, cake(3), DayWord.DONE);
        kitchen.add(new KitchenEvent(99, KitchenEvent.Kind.POWER_CUT, "", new Span(at(5), at(5) + 1)));
        PaceReport expected = learned();

        for (long seed = 1; seed <= 20; seed++) {
            Collections.shuffle(steps, new Random(seed));
            assertThat(learned()).as("seed %d", seed).isEqualTo(expected);
        }
        var one = new FinishedDay(problem(), plan().build(), new DayLog(steps, kitchen, List.of()));
        var other = new FinishedDay(problem(), plan().build(), new DayLog(steps.subList(0, 6), List.of(), List.of()));
        assertThat(LearnPaces.learn(problem().kitchen(), List.of(one, other))).isEqualTo(LearnPaces.learn(problem().kitchen(), List.of(other, one)));
    }

    @Test
    void should_say_nothing_of_a_few_steps() {
        took(1, 40);
        took(2, 40);
        assertThat(coating().word()).isEqualTo(PaceWord.TOO_FEW);
        assertThat(coating().learned()).isEmpty();

        took(3, 40);
        assertThat(coating().word()).isEqualTo(PaceWord.SLOWER);
        assertThat(coating().learned()).contains(2.0);
    }

    @ParameterizedTest
    @CsvSource({"20, 20, 20, AS_IN_USE", "20, 21, 20, AS_IN_USE", "21, 21, 21, SLOWER", "19, 19, 19, FASTER", "16, 16, 30, FASTER"})
    void should_leave_a_pace_that_differs_by_less_than_a_minute_in_twenty(int one, int two, int three, PaceWord word) {
        took(1, one);
        took(2, two);
        took(3, three);

        assertThat(coating().word()).isEqualTo(word);
    }

    @Test
    void should_never_propose_what_a_kitchen_file_does_not_take() {
        for (int i = 1; i <= 3; i++) {
            took(i, 1);
        }
        // 1 of 20 minutes is 0.05, below 0.1
        assertThat(coating().word()).isEqualTo(PaceWord.OUT_OF_RANGE);
        assertThat(learned().learned()).isEmpty();
    }

    @Test
    void should_set_it_beside_the_pace_in_use() {
        ana.paceFor("coating", 1.5).paceFor("piping", 0.9);
        for (int i = 1; i <= 3; i++) {
            took(i, 30);
        }

        assertThat(coating().inUse()).isEqualTo(1.5);
        assertThat(coating().word()).isEqualTo(PaceWord.AS_IN_USE);
        assertThat(learned().paces()).extracting(PaceRow::workKind, PaceRow::word)
                .containsExactly(tuple("coating", PaceWord.AS_IN_USE),
                        tuple("piping", PaceWord.NONE_SEEN));
    }

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
