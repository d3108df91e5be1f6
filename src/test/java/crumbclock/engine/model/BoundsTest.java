package crumbclock.engine.model;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import org.junit.jupiter.api.Test;

/** Earliest starts by waits alone. */
class BoundsTest {

    private static int earliest(ProblemBuilder problem, boolean mirrored, String stepId) {
        for (Task task : CompiledProblem.of(problem.person(aPerson("ann").onShift(0, 2880)).build(), mirrored).tasks) {
            if (task.step.id().equals(stepId)) {
                return task.earliestStart;
            }
        }
        throw new AssertionError(stepId);
    }

    private static ProblemBuilder chain() {
        return aProblem().horizon(2880).step(handsOn("c/mix", 20).notBefore(100)).step(resting("c/chill", 60, 90).putIn(2).takeOut(3))
                .step(handsOn("c/pipe", 10)).wait("c/mix", "c/chill", 5, Wait.NO_MOST).wait("c/chill", "c/pipe", 0, 15);
    }

    @Test
    void should_push_later_steps_by_lengths_and_least_waits() {
        // 100 + 20 of work + 5 of waiting; then 2 + 60 + 3 of chilling
        assertThat(earliest(chain(), false, "c/mix")).isEqualTo(100);
        assertThat(earliest(chain(), false, "c/chill")).isEqualTo(125);
        assertThat(earliest(chain(), false, "c/pipe")).isEqualTo(190);
    }

    @Test
    void should_pull_earlier_steps_after_the_start_that_a_most_wait_leaves_them() {
        // given piping not before 1000: chilling ends at 985 at the earliest, and lasts 2 + 90 + 3 at the most
        ProblemBuilder late = aProblem().step(resting("c/chill", 60, 90).putIn(2).takeOut(3))
                .step(handsOn("c/pipe", 10).notBefore(1000)).wait("c/chill", "c/pipe", 0, 15);

        // then
        assertThat(earliest(late, false, "c/chill")).isEqualTo(1000 - 15 - 95);
    }

    @Test
    void should_not_pull_past_a_stay_without_a_most_or_work_that_may_be_put_down() {
        // given
        ProblemBuilder endless = aProblem().step(resting("c/chill", 60)).step(handsOn("c/box", 10).mayPutDown())
                .step(handsOn("c/pipe", 10).notBefore(1000)).wait("c/chill", "c/pipe", 0, 15).wait("c/box", "c/pipe", 0, 15);

        // then
        assertThat(earliest(endless, false, "c/chill")).isZero();
        assertThat(earliest(endless, false, "c/box")).isZero();
    }

    @Test
    void should_let_the_later_step_begin_before_the_earlier_one_ends_by_a_negative_least() {
        // given
        ProblemBuilder overlap = aProblem().step(handsOn("c/turn-out", 10).notBefore(50)).step(resting("c/cool", 30))
                .wait("c/turn-out", "c/cool", -4, Wait.NO_MOST);

        // then
        assertThat(earliest(overlap, false, "c/cool")).isEqualTo(56);
    }

    @Test
    void should_take_the_fastest_pair_of_hands_for_least_and_the_slowest_for_most() {
        // given ann at pace 1, and bob who takes twice as long
        ProblemBuilder paced = aProblem().person(aPerson("bob").onShift(0, 2880).paceFor("coating", 2))
                .step(handsOn("c/coat", 20).kind("coating").notBefore(10)).step(handsOn("c/pipe", 5))
                .wait("c/coat", "c/pipe", 0, Wait.NO_MOST)
                .step(handsOn("d/coat", 20).kind("coating")).step(handsOn("d/pipe", 5).notBefore(500)).wait("d/coat", "d/pipe", 0, 60);

        // then
        assertThat(earliest(paced, false, "c/pipe")).isEqualTo(30);
        assertThat(earliest(paced, false, "d/coat")).isEqualTo(500 - 60 - 40);
    }

    @Test
    void should_begin_backward_at_the_latest_hand_over_in_time() {
        // given a delivery of 30 minutes whose moment, 20 after its start, is at 1400 at the latest, in 2880 minutes
        ProblemBuilder order = aProblem().step(handsOn("o/c/box", 10)).step(handsOn("o/door", 30))
                .wait("o/c/box", "o/door", 0, Wait.NO_MOST)
                .order(anOrder("o").cake("o/c", "o/c/box").delivered("o/door", 20, 1300, 1400));

        // then backward the door may end no earlier than when it starts at 1380, and boxing comes behind it
        assertThat(earliest(order, true, "o/door")).isEqualTo(2880 - 1380 - 30);
        assertThat(earliest(order, true, "o/c/box")).isEqualTo(2880 - 1380);
    }
}
