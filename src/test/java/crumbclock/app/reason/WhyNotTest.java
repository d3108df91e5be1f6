package crumbclock.app.reason;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WhyNotTest {

    private static final long SEED = 5;

    @Test
    void orderOnTimeHasNoReason() {
        Problem problem = boxed("A", 60, 600).person(aPerson("ana").onShift(480, 1020)).build();

        assertThat(reasons(problem)).isEqualTo(Map.of("A", List.of()));
    }

    @Test
    void chainThatIsTooLongIsToldWithItsLongestLinks() {
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 2880))
                .order(anOrder("A").cake("A1", "A1/box").setAsideBy(1320))
                .step(handsOn("A1/form", 60)).step(resting("A1/dry", 720)).step(handsOn("A1/join", 60))
                .step(resting("A1/harden", 720)).step(handsOn("A1/box", 5))
                .wait("A1/form", "A1/dry", 0, Wait.NO_MOST).wait("A1/dry", "A1/join", 0, Wait.NO_MOST)
                .wait("A1/join", "A1/harden", 0, Wait.NO_MOST).wait("A1/harden", "A1/box", 0, Wait.NO_MOST).build();

        assertThat(reasons(problem).get("A")).containsExactly(new Outcome.Reason(Rule.R01,
                "its steps need at least 26 h 5 min one after another up to the hand-over (longest: form 1 h 0 min, "
                        + "dry 12 h 0 min, join 1 h 0 min, harden 12 h 0 min), but there are only 22 h 0 min until Mon 22:00"));
    }

    @Test
    void chainThatJustFitsIsNoReason() {
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 2880))
                .order(anOrder("A").cake("A1", "A1/box").setAsideBy(125))
                .step(resting("A1/dry", 120)).step(handsOn("A1/box", 5)).wait("A1/dry", "A1/box", 0, Wait.NO_MOST).build();

        assertThat(LongestChain.tooLong(problem, problem.orders().get(0))).isEmpty();
        Problem oneMinuteLess = aProblem().person(aPerson("ana").onShift(0, 2880))
                .order(anOrder("A").cake("A1", "A1/box").setAsideBy(124))
                .step(resting("A1/dry", 120)).step(handsOn("A1/box", 5)).wait("A1/dry", "A1/box", 0, Wait.NO_MOST).build();
        assertThat(LongestChain.tooLong(oneMinuteLess, oneMinuteLess.orders().get(0))).isPresent();
    }

    @Test
    void bothCausesAreToldWhenOneOrderIsTooLongAndItsDeliveryTakesTheOnlyPerson() {
        // given: F1 dries too long, and whoever delivers it is not at the door for F2
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 1440))
                .order(anOrder("F1").cake("F1/1", "F1/1/box").delivered("F1/deliver", 60, 600, 600))
                .order(anOrder("F2").cake("F2/1", "F2/1/box").pickedUp("F2/hand", 570, 615))
                .step(resting("F1/1/dry", 1200)).step(handsOn("F1/1/box", 5)).step(handsOn("F1/deliver", 100).away())
                .step(handsOn("F2/1/box", 5)).step(handsOn("F2/hand", 5))
                .wait("F1/1/dry", "F1/1/box", 0, Wait.NO_MOST).wait("F1/1/box", "F1/deliver", 0, Wait.NO_MOST)
                .wait("F2/1/box", "F2/hand", 0, Wait.NO_MOST).build();

        // when
        Map<String, List<Outcome.Reason>> reasons = reasons(problem);

        // then
        assertThat(reasons.get("F1")).extracting(Outcome.Reason::rule).containsExactly(Rule.R01, Rule.R16);
        assertThat(reasons.get("F1").get(1).message()).isEqualTo("while ana is out delivering it from 09:00 to 10:40, "
                + "nobody is there to hand over F2 between Mon 09:30 and 10:15");
        assertThat(reasons.get("F2")).extracting(Outcome.Reason::message).allMatch(message -> message.endsWith(
                "nobody is there to hand it over between Mon 09:30 and 10:15: ana is out delivering F1 from 09:00 to 10:40"));
    }

    @Test
    void secondPersonAtTheDoorEndsTheClash() {
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 1440)).person(aPerson("ben").onShift(570, 620))
                .order(anOrder("F1").cake("F1/1", "F1/1/box").delivered("F1/deliver", 60, 600, 600))
                .order(anOrder("F2").cake("F2/1", "F2/1/box").pickedUp("F2/hand", 570, 615))
                .step(handsOn("F1/1/box", 5)).step(handsOn("F1/deliver", 100).away())
                .step(handsOn("F2/1/box", 5)).step(handsOn("F2/hand", 5))
                .wait("F1/1/box", "F1/deliver", 0, Wait.NO_MOST).wait("F2/1/box", "F2/hand", 0, Wait.NO_MOST).build();

        assertThat(HandOverClash.reasons(problem, new SmallSearch(SEED, 10_000))).isEmpty();
    }

    @Test
    void shiftThatBeginsTooLateIsAboutHands() {
        Problem problem = boxed("A", 60, 600).person(aPerson("ana").onShift(590, 1020)).build();

        assertThat(reasons(problem).get("A")).extracting(Outcome.Reason::rule).containsExactly(Rule.R03);
    }

    @Test
    void panThatIsLargerThanTheOvenIsAboutOvenRoom() {
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 1440)).oven(anOven("oven").rack(400, 300, 200))
                .order(anOrder("A").cake("A1", "A1/box").setAsideBy(600))
                .step(resting("A1/bake", 40, 45).bakesAt(180).roundPan(350, 80).putIn(5).takeOut(5))
                .step(handsOn("A1/box", 5)).wait("A1/bake", "A1/box", 0, Wait.NO_MOST).build();

        assertThat(reasons(problem).get("A")).extracting(Outcome.Reason::rule).containsExactly(Rule.R07);
    }

    @Test
    void orderThatIsLateBesideAnotherAloneNamesTheOther() {
        // given: one bowl for two cakes that are due when one of them is just done; hands there are
        Problem problem = aProblem().person(aPerson("ana").onShift(0, 1440)).person(aPerson("ben").onShift(0, 1440))
                .pool(aPool("bowl", 1))
                .order(anOrder("A").cake("A1", "A1/mix").setAsideBy(100))
                .order(anOrder("B").cake("B1", "B1/mix").setAsideBy(100))
                .step(handsOn("A1/mix", 90).takes("bowl", 1)).step(handsOn("B1/mix", 90).takes("bowl", 1)).build();

        // when
        Map<String, List<Outcome.Reason>> reasons = reasons(problem);

        // then
        List<Outcome.Reason> late = reasons.get("A").isEmpty() ? reasons.get("B") : reasons.get("A");
        String other = reasons.get("A").isEmpty() ? "A" : "B";
        assertThat(late).containsExactly(
                new Outcome.Reason(Rule.R06, "beside the other orders there is too little equipment, or rack or bench space; "
                        + "with more equipment, racks and benches it would be on time"),
                new Outcome.Reason(Rule.R06, "without " + other + " it would be on time"));
    }

    /** An order that is set aside by {@code until} after one step of hands. */
    private static ProblemBuilder boxed(String id, int minutes, int until) {
        return aProblem().order(anOrder(id).cake(id + "1", id + "1/box").setAsideBy(until))
                .step(handsOn(id + "1/box", minutes));
    }

    private static Map<String, List<Outcome.Reason>> reasons(Problem problem) {
        var found = PlanSearch.search(problem, SearchLimits.ofSteps(SEED, 50), SearchListener.SILENT);
        return new WhyNot(problem, SEED).reasons(found.timetable().outcomes());
    }
}
