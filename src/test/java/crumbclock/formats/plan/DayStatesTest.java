package crumbclock.formats.plan;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.KeptStep;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.TwoCakeMonday;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Span;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan of the two cakes says of its day. */
class DayStatesTest {

    private static final Problem PROBLEM = TwoCakeMonday.problem();
    private static final String OVEN = PROBLEM.kitchen().cavities().get(0).id();
    private static final String FRIDGE = PROBLEM.kitchen().stores().get(0).id();
    private static final DayState STATE = new DayState(400, List.of(new KitchenEvent(0, KitchenEvent.Kind.POWER_CUT, "", new Span(300, 310)),
            new KitchenEvent(0, KitchenEvent.Kind.OVEN_DEAD, OVEN, new Span(400, 900)), new KitchenEvent(0, KitchenEvent.Kind.STORE_WARM, FRIDGE, new Span(420, 500)),
            new KitchenEvent(0, KitchenEvent.Kind.PERSON_AWAY, "ana", new Span(500, 560))), Map.of("A1/coat", 15), Set.of("B1/box"),
            List.of(), List.of(), Map.of("A1/mix", 350), Set.of("A1/mix", "X/hold"), Set.of("X/hold"),
            new KeptPlan(400, List.of(new KeptStep("A1/coat", 500, List.of("ben"), "", ""), new KeptStep("A1/chill", 600, List.of(), "ana", "ben"))));

    private static SourceFile file(DayState state) {
        var timetable = TwoCakeMonday.timetable();
        return SourceFile.ofText("plan.json", PlanJson.write(PROBLEM, new Plan(PROBLEM.title(), timetable, List.of(), List.of(), 0, 0,
                new Plan.SearchNote(1, 1)), state));
    }

    @Test
    void should_read_what_was_written() {
        var log = new IssueLog();

        assertThat(DayStates.read(file(STATE), PROBLEM, log)).as("%s", log.sorted()).contains(STATE);
        assertThat(DayStates.read(file(DayState.NONE), PROBLEM, log)).isEmpty();
        assertThat(DayStates.again(file(STATE), PROBLEM, log)).contains(List.of());
        assertThat(log.isEmpty()).isTrue();
    }

    @Test
    void should_know_a_batch_made_again_when_it_is_made_again_once_more() {
        var log = new IssueLog();
        var again = List.of(new BatchAgain("X", List.of("A1", "B1")), new BatchAgain("X-again", List.of("B1")));
        var state = new DayState(400, List.of(), Map.of(), Set.of(), again, List.of(), Map.of(), Set.of(), Set.of(), KeptPlan.NONE);

        assertThat(DayStates.again(file(state), PROBLEM, log)).as("%s", log.sorted()).contains(again);
    }

    /** Each fault stands by itself, and all are told. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"kind\": \"oven\" | \"kind\": \"store\" | /day/away/1/id", "\"id\": \"ana\" | \"id\": \"anna\" | /day/away/3/id",
        "\"step\": \"A1/coat\", \"minutes\" | \"step\": \"A1/cool\", \"minutes\" | /day/slower/0/step", "[\"B1/box\"] | [\"B1/bix\"] | /day/skipped/0",
        "\"goingOn\": [\"X/hold\"] | \"goingOn\": [\"A1/box\"] | /day/goingOn/0", "\"lostBy\": 350 | \"lostBy\": 351 | /day/lost/0/lostByAt",
        "\"minutes\": 15 | \"minutes\": 0 | /day/slower/0/minutes"})
    void should_pin_each_fault_to_its_place(String from, String to, String place) {
        var log = new IssueLog();
        String text = file(STATE).text();
        assertThat(text).contains(from);

        var read = DayStates.read(SourceFile.ofText("plan.json", text.replace(from, to)), PROBLEM, log);

        assertThat(read).isEmpty();
        assertThat(log.sorted()).extracting(Issue::where).contains(place);
    }

    @Test
    void should_know_which_cakes_use_a_batch() {
        var log = new IssueLog();
        var state = new DayState(400, List.of(), Map.of(), Set.of(), List.of(new BatchAgain("Y", List.of("A1")), new BatchAgain("X", List.of("C1"))), List.of(), Map.of(),
                Set.of(), Set.of(), KeptPlan.NONE);

        assertThat(DayStates.again(file(state), PROBLEM, log)).isEmpty();
        assertThat(log.sorted()).extracting(Issue::where).containsExactly("/day/again/0/batch", "/day/again/1/cakes/0");
    }
}
