package crumbclock.report.promise;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PersonEffect;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.domain.promise.Toll;
import crumbclock.formats.promise.PromiseJson;
import crumbclock.report.Golden;
import crumbclock.report.Xml;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Answers made by hand, as they are told: two orders are promised, N is asked for on Monday at 09:00. */
class PromiseSummaryTest {

    private static final int NINE = 540;
    private static final int ELEVEN = 660;
    private static final Problem ASKED = aProblem().person(aPerson("ada").onShift(NINE, 1200)).person(aPerson("bo").onShift(600, 1200))
            .order(anOrder("C1").cake("C1/1", "C1/box").setAsideBy(720).bufferWish(60))
            .order(anOrder("C2").cake("C2/1", "C2/box").setAsideBy(900).bufferWish(60))
            .order(anOrder("N").cake("N/1", "N/box").setAsideBy(ELEVEN).bufferWish(30)).build();

    private static Outcome ready(String order, int minute, int until) {
        return new Outcome(order, true, minute, minute, until - minute, Math.max(0, minute - until), List.of(), List.of());
    }

    private static PromisedPlan plan(int hand, int yesBy, int readyC1, int readyC2, int moved) {
        Timetable empty = aTimetable().build();
        var toll = new Toll(List.of(new OrderEffect("C1", ready("C1", 640, 720), ready("C1", readyC1, 720), 60, moved, 5 * moved),
                new OrderEffect("C2", ready("C2", 800, 900), ready("C2", readyC2, 900), 60, 0, 0)),
                List.of(new PersonEffect("ada", moved, 40), new PersonEffect("bo", 0, 0)));
        return new PromisedPlan(ASKED, new Plan("with N", empty, List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1)), ready("N", hand, ELEVEN),
                toll, yesBy);
    }

    private static PromiseAnswer answer(Optional<PromisedPlan> wished, List<Offer> offers, List<Help> helps, boolean complete) {
        Plan have = new Plan("known", aTimetable().build(), List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1));
        return new PromiseAnswer(ASKED, have, ASKED, "N", NINE, wished, offers, helps, 4, 1, complete);
    }

    private static Offer offer(Price price, int notBefore, PromisedPlan earliest, PromisedPlan lastYes, int kept) {
        return new Offer(price, Optional.ofNullable(earliest), notBefore, Optional.ofNullable(lastYes), kept);
    }

    private static PromiseAnswer onTime() {
        PromisedPlan wished = plan(ELEVEN, 560, 700, 800, 3);
        PromisedPlan earlier = plan(630, 545, 725, 800, 4);
        return answer(Optional.of(wished), List.of(offer(Price.NOBODY_WORSE, 630, plan(715, 600, 640, 800, 0), plan(715, 620, 640, 800, 0), 715),
                offer(Price.ALL_ON_TIME, 630, plan(650, 550, 705, 800, 3), wished, ELEVEN), offer(Price.ANY_PRICE, 630, earlier, wished, ELEVEN)),
                List.of(new Help("bo", "bo from Mon 08:30 on instead of Mon 10:00", Price.NOBODY_WORSE, Optional.of(715), plan(655, 540, 640, 800, 0)),
                        new Help("stock-layers", "spare layers in stock", Price.NOBODY_WORSE, Optional.of(715), plan(690, 540, 640, 800, 0))), true);
    }

    @Test
    void should_say_the_answers_in_sentences_and_one_table() {
        Golden.assertSame("promise.txt", PromiseSummary.render(onTime()));
        Golden.assertSame("promise.json", PromiseJson.write(onTime()));
    }

    @Test
    void should_say_yes_without_a_but_when_nobody_is_worse_off() {
        PromisedPlan free = plan(ELEVEN, 560, 640, 800, 0);

        String text = PromiseSummary.render(answer(Optional.of(free), List.of(offer(Price.NOBODY_WORSE, 630, free, free, ELEVEN)), List.of(), true));

        assertThat(text).contains("\nYes. N at Mon 11:00 can be promised, and nobody else is worse off.\n  No step of the others moves.\n",
                "4 things were tried; none of them made an earlier time possible.");
    }

    @Test
    void should_say_who_waits() {
        PromisedPlan late = plan(ELEVEN, 560, 732, 915, 6);

        String text = PromiseSummary.render(answer(Optional.of(late), List.of(offer(Price.ANY_PRICE, 630, late, late, ELEVEN)), List.of(), true));

        assertThat(text).contains("\nOnly if others wait: with N at Mon 11:00 promised, C1 is 12 min late and C2 is 15 min late.\n",
                "  C1 is 12 min late.\n  C2 is 15 min late.\n");
    }

    /** A minute too early to be possible, and just possible. */
    @Test
    void should_tell_what_is_proven_from_what_was_not_found() {
        assertThat(none(ELEVEN + 1)).contains("\nNo. No plan whatever can have N at Mon 11:00; before Mon 11:01 it cannot be handed over.\n");
        assertThat(none(ELEVEN)).contains("\nNo plan was found that has N at Mon 11:00.\n").contains("none found");
        assertThat(none(-1)).contains("No plan whatever can have N at Mon 11:00, or at all before the end.").contains("none, proven");
    }

    private static String none(int notBefore) {
        return PromiseSummary.render(answer(Optional.empty(), List.of(offer(Price.NOBODY_WORSE, notBefore, null, null, -1)), List.of(), true));
    }

    @Test
    void should_say_that_it_was_ended_early() {
        PromiseAnswer ended = answer(Optional.empty(), List.of(), List.of(), false);

        assertThat(PromiseSummary.render(ended)).contains("Ended early: what is missing below was not looked for.");
        assertThat(PromisePage.render(ended)).contains("<strong>Ended early.</strong>");
    }

    @Test
    void should_draw_each_time_at_its_place_to_scale() throws Exception {
        String page = PromisePage.render(onTime());

        Xml.parse(page.replace("<!DOCTYPE html>", ""));
        assertThat(page).contains("earliest 11:55", "earliest 10:50", "earliest 10:30", "yes by 09:20", "yes by 10:20", "wished 11:00", "asked 09:00");
        // from 09:00 to 10:20 at 1.5 of the page's units a minute, and to 09:20
        assertThat(page).contains("width=\"120\" height=\"16\" class=\"can-wait\"", "width=\"30\" height=\"16\" class=\"can-wait\"")
                .contains("class=\"earliest proven\"");
        assertThat(page.split("class=\"earliest\"", -1)).hasSize(3);
    }

    @Test
    void should_name_each_plan_once() {
        assertThat(onTime().plans().keySet()).containsExactly("as-wished", "nobody-worse", "all-on-time", "any-price", "nobody-worse-last-yes",
                "help-bo", "help-stock-layers");
    }

    @Test
    void should_give_equal_bytes_for_equal_answers() {
        assertThat(PromisePage.render(onTime())).isEqualTo(PromisePage.render(onTime()));
    }
}
