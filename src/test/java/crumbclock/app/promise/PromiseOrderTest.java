package crumbclock.app.promise;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.rules.Audit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Answers that can be worked out by hand. */
class PromiseOrderTest {

    private static PromiseAnswer answer(Question question) {
        return PromiseOrder.answer(question, OneMore.SHORT, new Listener(Integer.MAX_VALUE));
    }

    /** @param most things that are looked for before it asks to stop */
    private record Listener(int most, List<String> heard) implements PromiseListener {

        Listener(int most) {
            this(most, new ArrayList<>());
        }

        @Override
        public void looking(String what, int done, int about) {
            heard.add(what);
            assertThat(done).isLessThanOrEqualTo(about);
        }

        @Override
        public boolean stopAsked() {
            return heard.size() > most;
        }
    }

    private static int earliest(PromiseAnswer answer, Price price) {
        return offer(answer, price).earliest().orElseThrow().own().handMinute();
    }

    private static Offer offer(PromiseAnswer answer, Price price) {
        return answer.offers().stream().filter(offer -> offer.price() == price).findFirst().orElseThrow();
    }

    @Test
    void should_find_the_earliest_time_for_each_price_and_what_it_costs() {
        // given A wanted by 100: either it stays first, or B does and A is 20 minutes late
        PromiseAnswer answer = answer(OneMore.question(100, 60));

        // then
        assertThat(earliest(answer, Price.NOBODY_WORSE)).isEqualTo(120);
        assertThat(earliest(answer, Price.ALL_ON_TIME)).isEqualTo(120);
        assertThat(earliest(answer, Price.ANY_PRICE)).isEqualTo(60);
        OrderEffect onA = offer(answer, Price.ANY_PRICE).earliest().orElseThrow().toll().orders().get(0);
        assertThat(onA.isLater()).isTrue();
        assertThat(onA.after().lateMinutes()).isEqualTo(20);
        assertThat(onA.moved()).isEqualTo(1);
        assertThat(onA.mostMoved()).isEqualTo(60);
        assertThat(answer.wished().orElseThrow().toll().price()).isEqualTo(Price.ANY_PRICE);
        assertThat(answer.wished().orElseThrow().toll().laterMinutes()).isEqualTo(20);
    }

    @Test
    void should_tell_a_smaller_buffer_from_a_time_that_costs_nothing() {
        PromiseAnswer answer = answer(OneMore.question(200, 60));

        assertThat(earliest(answer, Price.NOBODY_WORSE)).isEqualTo(120);
        assertThat(earliest(answer, Price.ALL_ON_TIME)).isEqualTo(60);
        OrderEffect onA = answer.wished().orElseThrow().toll().orders().get(0);
        assertThat(onA.hasLessBuffer()).isTrue();
        assertThat(onA.before().bufferMinutes()).isEqualTo(140);
        assertThat(onA.after().bufferMinutes()).isEqualTo(80);
    }

    @Test
    void should_say_what_is_proven() {
        PromiseAnswer answer = answer(OneMore.question(200, 60));

        assertThat(offer(answer, Price.ALL_ON_TIME).isProven()).isTrue();
        assertThat(offer(answer, Price.NOBODY_WORSE).isProven()).isFalse();
        assertThat(offer(answer, Price.NOBODY_WORSE).notBefore()).isEqualTo(60);
    }

    @Test
    void should_prove_that_there_is_no_time_at_all() {
        // given more work than Ada has hours
        PromiseAnswer answer = answer(OneMore.question(200, OneMore.asked(200, 900, 700).build()));

        assertThat(answer.wished()).isEmpty();
        assertThat(answer.offers()).hasSize(3).allMatch(offer -> offer.earliest().isEmpty() && offer.isProven() && offer.notBefore() == -1);
    }

    @Test
    void should_find_until_when_it_can_wait_for_a_yes() {
        // given B wanted by 300, which takes 60 minutes: so Ada has to begin at 240 at the latest
        PromiseAnswer answer = answer(OneMore.question(200, 300));

        assertThat(offer(answer, Price.NOBODY_WORSE).kept()).isEqualTo(300);
        assertThat(offer(answer, Price.NOBODY_WORSE).lastYes().orElseThrow().sayYesBy()).isEqualTo(240);
        assertThat(offer(answer, Price.ANY_PRICE).lastYes().orElseThrow().sayYesBy()).isEqualTo(240);
    }

    @Test
    void should_need_a_yes_at_once_where_time_is_short() {
        PromiseAnswer answer = answer(OneMore.question(200, 60));

        assertThat(offer(answer, Price.ALL_ON_TIME).kept()).isEqualTo(60);
        assertThat(offer(answer, Price.ALL_ON_TIME).lastYes().orElseThrow().sayYesBy()).isZero();
        assertThat(offer(answer, Price.NOBODY_WORSE).kept()).isEqualTo(120);
        assertThat(offer(answer, Price.NOBODY_WORSE).lastYes().orElseThrow().sayYesBy()).isEqualTo(60);
    }

    @Test
    void should_leave_what_begins_before_now_as_it_is() {
        // given it is asked while A is being made
        Question asked = OneMore.question(100, 60);
        PromiseAnswer answer = answer(new Question(asked.base(), asked.have(), asked.asked(), "oB", 30, List.of()));

        assertThat(earliest(answer, Price.ANY_PRICE)).isEqualTo(120);
        PlacedStep a = offer(answer, Price.ANY_PRICE).earliest().orElseThrow().plan().timetable().steps().get(0);
        assertThat(a.stepId()).isEqualTo("A/work");
        assertThat(a.span()).isEqualTo(asked.have().timetable().steps().get(0).span());
    }

    @Test
    void should_list_only_help_that_is_used() {
        // given a second pair of hands, which helps, and a mixer that nobody needs
        Problem hands = OneMore.asked(100, 60).person(aPerson("bo").onShift(0, 600)).build();
        Problem mixer = OneMore.asked(100, 60).pool(aPool("mixer", 1)).build();

        PromiseAnswer answer = answer(OneMore.question(100, 60, new Question.Help("bo", "Bo", hands), new Question.Help("mixer", "a mixer", mixer)));

        assertThat(answer.tried()).isEqualTo(2);
        assertThat(answer.helps()).extracting(Help::words).containsExactly("Bo");
        Help bo = answer.helps().get(0);
        assertThat(bo.price()).isEqualTo(Price.ALL_ON_TIME);
        assertThat(bo.before()).contains(120);
        assertThat(bo.plan().own().handMinute()).isEqualTo(60);
    }

    @Test
    void should_let_an_order_that_is_late_already_stay_as_late() {
        // given A wanted by 30 and ready at 60: it may not become later, and need not become earlier
        PromiseAnswer answer = answer(new Question(OneMore.base(30).build(), OneMore.plan(aTimetable().work("A/work", 0, 60, "ada")
                .made("oA", 60, 60, -30, 30).build()), OneMore.asked(30, 60).build(), "oB", 0, List.of()));

        assertThat(earliest(answer, Price.ALL_ON_TIME)).isEqualTo(120);
        assertThat(earliest(answer, Price.ANY_PRICE)).isEqualTo(60);
    }

    @Test
    void should_never_give_up_an_order_for_the_new_one() {
        // given hours for one of the two alone
        Problem base = aProblem().horizon(1440).person(aPerson("ada").onShift(0, 100)).step(handsOn("A/work", 60))
                .order(anOrder("oA").cake("A", "A/work").setAsideBy(100)).build();
        Problem asked = aProblem().horizon(1440).person(aPerson("ada").onShift(0, 100)).step(handsOn("A/work", 60)).step(handsOn("B/work", 60))
                .order(anOrder("oA").cake("A", "A/work").setAsideBy(100)).order(anOrder("oB").cake("B", "B/work").setAsideBy(100)).build();

        PromiseAnswer answer = answer(new Question(base, OneMore.have(100), asked, "oB", 0, List.of()));

        assertThat(answer.offers()).hasSize(3).allMatch(offer -> offer.earliest().isEmpty() && !offer.isProven());
        assertThat(answer.wished()).isEmpty();
    }

    @Test
    void should_answer_with_sound_plans_alone() {
        PromiseAnswer answer = answer(OneMore.question(100, 60));

        assertThat(answer.plans()).isNotEmpty().allSatisfy((name, plan) -> {
            assertThat(plan.plan().isSound()).as(name).isTrue();
            assertThat(Audit.audit(plan.problem(), plan.plan().timetable()).findings()).as(name).isEmpty();
            assertThat(Audit.audit(plan.problem(), plan.plan().timetable()).softCost()).as(name).isEqualTo(plan.plan().softCost());
        });
    }

    @Test
    void should_give_the_same_answer_for_the_same_steps_and_seed() {
        assertThat(answer(OneMore.question(100, 300))).isEqualTo(answer(OneMore.question(100, 300)));
    }

    @Test
    void should_keep_what_was_found_when_asked_to_stop() {
        var listener = new Listener(3);

        PromiseAnswer answer = PromiseOrder.answer(OneMore.question(100, 60), OneMore.SHORT, listener);

        assertThat(answer.complete()).isFalse();
        assertThat(earliest(answer, Price.NOBODY_WORSE)).isEqualTo(120);
        assertThat(answer.plans().values()).extracting(PromisedPlan::plan).allMatch(Plan::isSound);
    }
}
