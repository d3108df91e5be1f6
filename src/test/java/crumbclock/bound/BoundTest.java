package crumbclock.bound;

import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Bounds that can be added up by hand. */
class BoundTest {

    private static OrderBound only(LowerBound bound) {
        assertThat(bound.orders()).hasSize(1);
        return bound.orders().get(0);
    }

    private static ProblemBuilder oneStep(crumbclock.fixture.StepBuilder step) {
        return aProblem().step(step).order(anOrder("order").cake("A", "A/work").setAsideBy(60));
    }

    @Test
    void should_add_up_steps_and_least_waits() {
        // given 20 min, a wait of 45, a rest of 30 with touches of 3 and 2, then 10 min: 20 + 45 + 35 + 10 = 110
        var problem = aProblem().person(aPerson("ana").onShift(0, 600))
                .step(handsOn("A/mix", 20)).step(resting("A/chill", 30).putIn(3).takeOut(2)).step(handsOn("A/box", 10))
                .wait("A/mix", "A/chill", 45, Wait.NO_MOST).wait("A/chill", "A/box", 0, Wait.NO_MOST)
                .order(anOrder("order").cake("A", "A/box").setAsideBy(100).importance(3)).build();

        LowerBound bound = Bound.of(problem);

        assertThat(only(bound)).isEqualTo(new OrderBound("order", true, 110, 110, 10));
        assertThat(bound.endMinute()).isEqualTo(110);
        assertThat(bound.lateMinutes()).isEqualTo(10);
        assertThat(bound.medium()).isEqualTo(10 * 3 * 100 + 5000);
        assertThat(bound.allPossible()).isTrue();
    }

    @Test
    void should_keep_a_step_that_may_not_be_put_down_out_of_a_break() {
        // given 50 min of work, 40 before the break: it begins after it, at 70
        var problem = oneStep(handsOn("A/work", 50)).person(aPerson("ana").onShift(0, 600).onBreak(40, 70)).build();

        assertThat(only(Bound.of(problem)).readyMinute()).isEqualTo(120);
    }

    @Test
    void should_carry_a_step_that_may_be_put_down_across_a_break() {
        // given 50 min of work, 40 before the break and 10 after it
        var problem = oneStep(handsOn("A/work", 50).mayPutDown()).person(aPerson("ana").onShift(0, 600).onBreak(40, 70)).build();

        assertThat(only(Bound.of(problem)).readyMinute()).isEqualTo(80);
    }

    @Test
    void should_take_the_first_to_be_done_of_those_with_the_skill() {
        // given ana without the skill, ben from 100 on at pace 2 (40 min), cleo from 115 on at pace 1 (20 min)
        var problem = oneStep(handsOn("A/work", 20).skill("piping").kind("decorating"))
                .person(aPerson("ana").onShift(0, 600))
                .person(aPerson("ben").onShift(100, 600).skilledIn("piping").paceFor("decorating", 2.0))
                .person(aPerson("cleo").onShift(115, 600).skilledIn("piping")).build();

        assertThat(only(Bound.of(problem)).readyMinute()).isEqualTo(135);
    }

    @Test
    void should_wait_for_the_second_of_two_who_work_together() {
        var problem = oneStep(handsOn("A/work", 20).people(2))
                .person(aPerson("ana").onShift(0, 600)).person(aPerson("ben").onShift(70, 600)).build();

        assertThat(only(Bound.of(problem)).readyMinute()).isEqualTo(90);
    }

    @Test
    void should_heat_the_oven_while_somebody_is_there_and_the_oven_is_not_away() {
        // given somebody from 60 on, the oven away until 100, 15 min to heat up: in at 115, out at 145
        var problem = aProblem().person(aPerson("ana").onShift(60, 600)).oven(anOven("oven").rack(300, 300, 200).preheatedIn(15)
                .away(0, 100)).step(resting("A/bake", 30, 35).bakesAt(180).roundPan(200, 80))
                .order(anOrder("order").cake("A", "A/bake").setAsideBy(600)).build();

        assertThat(only(Bound.of(problem)).readyMinute()).isEqualTo(145);
    }

    @Test
    void should_not_hand_over_before_the_window_opens() {
        var problem = aProblem().person(aPerson("ana").onShift(0, 600)).step(handsOn("A/work", 20))
                .step(handsOn("order/door", 5).mayPutDown()).wait("A/work", "order/door", 0, Wait.NO_MOST)
                .order(anOrder("order").cake("A", "A/work").pickedUp("order/door", 300, 330)).build();

        LowerBound bound = Bound.of(problem);

        assertThat(only(bound)).isEqualTo(new OrderBound("order", true, 20, 300, 0));
        assertThat(bound.endMinute()).isEqualTo(305);
    }

    /** Hands: five cakes of 30 min each for one person end no earlier than 150; for two, 15 cakes' halves: 75, so 90 in whole steps. */
    @Test
    void should_add_up_hands() {
        assertThat(Bound.of(cakes(5, 30, 1).build()).endMinute()).isEqualTo(150);
        assertThat(Bound.of(cakes(5, 30, 2).build()).endMinute()).isEqualTo(75);
    }

    /** Three cakes due at 60, 20 min each by one person: one is 0 late, or all share 0 + 0 + 0; four: the last ends at 80, 20 late. */
    @Test
    void should_find_lateness_that_orders_owe_to_each_other() {
        assertThat(Bound.of(cakes(3, 20, 1).build()).medium()).isZero();

        LowerBound four = Bound.of(cakes(4, 20, 1).build());

        assertThat(four.lateMinutes()).isEqualTo(20);
        assertThat(four.medium()).isEqualTo(20 * 100 + 5000);
        assertThat(four.orders()).allSatisfy(order -> assertThat(order.lateMinutes()).isZero());
    }

    private static ProblemBuilder cakes(int count, int minutes, int people) {
        ProblemBuilder problem = aProblem();
        IntStream.range(0, people).forEach(person -> problem.person(aPerson("person " + person).onShift(0, 600)));
        IntStream.range(0, count).forEach(cake -> problem.step(handsOn("C" + cake + "/work", minutes))
                .order(anOrder("order " + cake).cake("C" + cake, "C" + cake + "/work").setAsideBy(60)));
        return problem;
    }

    /** Two bowls, cleaned in 10: four batters of 30 min need two rounds, 30 + 10 + 30. */
    @Test
    void should_clean_pieces_between_uses() {
        ProblemBuilder problem = aProblem().pool(aPool("bowl", 2).cleanedIn(10));
        IntStream.range(0, 4).forEach(cake -> problem.step(resting("C" + cake + "/rest", 30, 30).takes("bowl", 1))
                .order(anOrder("order " + cake).cake("C" + cake, "C" + cake + "/rest").setAsideBy(600)));

        assertThat(Bound.of(problem.build()).endMinute()).isEqualTo(70);
    }

    /** One rack with room for one pan: three bakes of 30 after 15 min of heating; and a shelf with room for one cake. */
    @Test
    void should_count_what_fits_an_oven_and_a_shelf_once() {
        ProblemBuilder bakes = aProblem().person(aPerson("ana").onShift(0, 600))
                .oven(anOven("oven").rack(300, 300, 200).preheatedIn(15));
        ProblemBuilder stays = aProblem().store(aFridge("fridge").shelf(aShelf("only", 300, 300, 250)));
        IntStream.range(0, 3).forEach(cake -> {
            bakes.step(resting("C" + cake + "/bake", 30, 35).bakesAt(180).roundPan(200, 80))
                    .order(anOrder("order " + cake).cake("C" + cake, "C" + cake + "/bake").setAsideBy(600));
            stays.step(resting("C" + cake + "/stay", 40, 60).stands(round(200), PlaceKind.FRIDGE))
                    .order(anOrder("order " + cake).cake("C" + cake, "C" + cake + "/stay").setAsideBy(600));
        });

        assertThat(Bound.of(bakes.build()).endMinute()).isEqualTo(15 + 3 * 30);
        assertThat(Bound.of(stays.build()).endMinute()).isEqualTo(3 * 40);
    }

    @Test
    void should_prove_that_an_order_cannot_be_made_and_what_that_costs() {
        // given a rest of 700 min in 600, and another order that can be made but is late
        var problem = aProblem().horizon(600).person(aPerson("ana").onShift(0, 600))
                .step(resting("A/dry", 700)).order(anOrder("dry").cake("A", "A/dry").setAsideBy(500).importance(2))
                .step(handsOn("B/work", 70)).order(anOrder("work").cake("B", "B/work").setAsideBy(60)).build();

        LowerBound bound = Bound.of(problem);

        assertThat(bound.orders()).containsExactly(new OrderBound("dry", false, -1, -1, 0), new OrderBound("work", true, 70, 70, 10));
        assertThat(bound.medium()).isEqualTo(2 * 100_000_000L + 10 * 100 + 5000);
        assertThat(bound.allPossible()).isFalse();
        assertThat(bound.endMinute()).isEqualTo(70);
    }

    @Test
    void should_prove_that_two_orders_cannot_both_be_made() {
        // given 60 min of work each and 100 min of somebody
        var problem = aProblem().horizon(100).person(aPerson("ana").onShift(0, 100));
        for (String id : new String[] {"A", "B"}) {
            problem.step(handsOn(id + "/work", 60)).order(anOrder(id).cake(id, id + "/work").setAsideBy(100));
        }

        LowerBound bound = Bound.of(problem.build());

        assertThat(bound.orders()).allMatch(OrderBound::possible);
        assertThat(bound.allPossible()).isFalse();
        assertThat(bound.medium()).isEqualTo(100_000_000L);
    }

    @Test
    void should_tell_the_end_for_the_orders_that_are_made() {
        var problem = cakes(5, 30, 1).build();

        LowerBound two = Bound.of(problem, Set.of("order 0", "order 3"));

        assertThat(two.endMinute()).isEqualTo(60);
        assertThat(two.lateMinutes()).isZero();
        assertThat(two.medium()).as("holds for all plans").isEqualTo(Bound.of(problem).medium());
        assertThat(Bound.of(problem, Set.of()).endMinute()).isZero();
    }

    @Test
    void should_count_a_day_no_longer_than_somebody_may_work() {
        // given 4 × 100 min, at most 300 a day: the last 100 fall on the second day, 1440 + 100
        var problem = cakesOverDays();

        assertThat(Bound.of(problem.build()).endMinute()).isEqualTo(1540);
    }

    private static ProblemBuilder cakesOverDays() {
        ProblemBuilder problem = aProblem().person(aPerson("ana").onShift(0, 600).onShift(1440, 2040).atMostADay(300));
        IntStream.range(0, 4).forEach(cake -> problem.step(handsOn("C" + cake + "/work", 100))
                .order(anOrder("order " + cake).cake("C" + cake, "C" + cake + "/work").setAsideBy(2880)));
        return problem;
    }
}
