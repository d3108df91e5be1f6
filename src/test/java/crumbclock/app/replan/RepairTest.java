package crumbclock.app.replan;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Repair.Missed;
import crumbclock.domain.work.Wait;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A cake is coated, chilled for 20 to 60 min, coated again within 5 min, and boxed; somebody was busy elsewhere. */
class RepairTest {

    private static final SearchLimits SHORT = SearchLimits.ofSteps(1, 200);

    private static Problem problem(Repair... repairs) {
        var problem = aProblem().horizon(900).person(aPerson("ana").onShift(0, 900))
                .step(handsOn("A/thin", 10)).step(resting("A/chill", 20, 60)).step(handsOn("A/coat", 15)).step(handsOn("A/box", 5))
                .wait("A/thin", "A/chill", 0, 10).wait("A/chill", "A/coat", 0, 5).wait("A/coat", "A/box", 0, 400)
                .order(anOrder("O").cake("A", "A/box").setAsideBy(600));
        List.of(repairs).forEach(problem::repair);
        return problem.build();
    }

    /** Ten to twenty minutes on the counter, within five from the fridge, and the coat within five after. */
    private static Repair standOut(Missed... missed) {
        return new Repair("A/chill", "A/coat", Set.of(missed), List.of(resting("A/stand-out", 10, 20).build()),
                List.of(new Wait("A/chill", "A/stand-out", 0, 5), new Wait("A/stand-out", "A/coat", 0, 5)));
    }

    private static Plan plan() {
        var have = aTimetable().work("A/thin", 100, 110, "ana").step("A/chill", 110, 140).work("A/coat", 140, 155, "ana")
                .work("A/box", 155, 160, "ana").made("O", 160, 160, 440, 0).build();
        return new Plan("known", have, List.of(), List.of(), 0, 0, new Plan.SearchNote(1, 1));
    }

    private static StepEvent line(int minute, String step, DayWord word) {
        return new StepEvent(minute, minute, List.of(step), word, 0);
    }

    private static DayLog day(StepEvent... lines) {
        return new DayLog(List.of(lines), List.of(), List.of());
    }

    private static Replanned replan(Problem problem, int now, DayLog log) {
        return Replan.replan(problem, plan(), log, now, SHORT, SearchListener.SILENT);
    }

    private static Span span(Replanned made, String step) {
        return made.plan().timetable().steps().stream().filter(one -> one.stepId().equals(step)).findFirst().map(PlacedStep::span).orElseThrow();
    }

    private static List<String> ids(Replanned made) {
        return made.plan().timetable().steps().stream().map(PlacedStep::stepId).toList();
    }

    /** Nobody came until minute 200: 90 minutes in the fridge where 60 are allowed. */
    @Test
    void should_let_a_coat_stand_out_that_was_chilled_too_long() {
        // when
        Problem problem = problem(standOut(Missed.REST_TOO_LONG));
        Replanned made = replan(problem, 200, day(line(110, "A/thin", DayWord.DONE), line(200, "A/coat", DayWord.REDO)));

        // then it stands out before the next coat, and the plan says what was missed in fact
        assertThat(span(made, "A/stand-out").minutes()).isBetween(10, 20);
        assertThat(span(made, "A/stand-out").start()).isBetween(span(made, "A/chill").end(), span(made, "A/chill").end() + 5);
        assertThat(span(made, "A/coat").start()).isBetween(span(made, "A/stand-out").end(), span(made, "A/stand-out").end() + 5);
        assertThat(made.news().inFact()).isNotEmpty().allMatch(finding -> finding.rule() == Rule.R02 && finding.items().equals(List.of("A/chill")));
        assertThat(made.plan().findings()).isEqualTo(made.news().inFact());
        assertThat(made.plan().timetable().outcomes()).allMatch(Outcome::possible);
        assertThat(made.news().notes()).extracting(DayNote::message).anyMatch(note -> note.contains("A/chill") && note.contains("\"stand-out\""));
        assertThat(made.state().repairs()).containsExactly("A/stand-out");
    }

    @Test
    void should_do_no_repair_when_nothing_is_missed() {
        Problem problem = problem(standOut(Missed.REST_TOO_LONG, Missed.REST_TOO_SHORT, Missed.WAIT_TOO_LONG));

        Replanned asPlanned = replan(problem, 130, day(line(110, "A/thin", DayWord.DONE)));
        Replanned onTheLastMinute = replan(problem, 170, day(line(110, "A/thin", DayWord.DONE), line(170, "A/coat", DayWord.REDO)));

        assertThat(ids(asPlanned)).doesNotContain("A/stand-out");
        assertThat(asPlanned.plan().findings()).isEmpty();
        assertThat(ids(onTheLastMinute)).doesNotContain("A/stand-out");
        assertThat(onTheLastMinute.plan().findings()).isEmpty();
    }

    /** Taken out at 150, and nobody coated it within 5 minutes. */
    @Test
    void should_repair_a_wait_that_is_over() {
        Problem problem = problem(standOut(Missed.WAIT_TOO_LONG));

        Replanned made = replan(problem, 180, day(line(150, "A/chill", DayWord.DONE), line(180, "A/coat", DayWord.REDO)));

        assertThat(span(made, "A/stand-out").start()).isGreaterThanOrEqualTo(180);
        assertThat(span(made, "A/coat").start()).isBetween(span(made, "A/stand-out").end(), span(made, "A/stand-out").end() + 5);
        assertThat(made.news().inFact()).extracting(Finding::items).contains(List.of("A/chill", "A/coat"));
        assertThat(made.plan().findings()).isEqualTo(made.news().inFact());
    }

    @Test
    void should_repair_a_rest_that_was_too_short() {
        Problem problem = problem(standOut(Missed.REST_TOO_SHORT));

        Replanned made = replan(problem, 122, day(line(122, "A/chill", DayWord.DONE)));

        assertThat(span(made, "A/chill")).isEqualTo(new Span(110, 122));
        assertThat(span(made, "A/stand-out").minutes()).isBetween(10, 20);
        assertThat(made.news().inFact()).singleElement().satisfies(finding -> assertThat(finding.rule()).isEqualTo(Rule.R01));
        assertThat(made.plan().findings()).isEqualTo(made.news().inFact());
    }

    /** Ana has to leave for two hours before she can coat: what will be missed is repaired as well. */
    @Test
    void should_repair_what_cannot_be_kept_any_more() {
        Problem problem = problem(standOut(Missed.REST_TOO_LONG));
        var away = new KitchenEvent(1, KitchenEvent.Kind.PERSON_AWAY, "ana", new Span(120, 300));

        Replanned made = replan(problem, 120, new DayLog(List.of(line(110, "A/thin", DayWord.DONE)), List.of(away), List.of()));
        Replanned without = replan(problem(), 120, new DayLog(List.of(line(110, "A/thin", DayWord.DONE)), List.of(away), List.of()));

        assertThat(ids(made)).contains("A/stand-out");
        assertThat(span(made, "A/coat").start()).isGreaterThanOrEqualTo(300);
        assertThat(made.plan().timetable().outcomes()).allMatch(Outcome::possible);
        assertThat(made.plan().findings()).isEqualTo(made.news().inFact());
        // where the method knows no repair, the thin coat is done once more
        assertThat(span(without, "A/thin").start()).isGreaterThanOrEqualTo(300);
        assertThat(without.plan().findings()).isEmpty();
    }

    @Test
    void should_make_the_same_problem_again_and_plan_on_from_it() {
        // given
        Problem problem = problem(standOut(Missed.REST_TOO_LONG, Missed.WAIT_TOO_LONG));
        List<StepEvent> lines = new ArrayList<>(List.of(line(110, "A/thin", DayWord.DONE), line(200, "A/coat", DayWord.REDO)));
        Replanned first = replan(problem, 200, new DayLog(lines, List.of(), List.of()));

        // when audited, it is the same problem
        assertThat(DayProblem.whole(problem, first.state(), first.plan().timetable())).isEqualTo(first.problem());
        assertThat(DayAudit.audit(problem, first.state(), first.plan()).plan().cost()).isEqualTo(first.plan().cost());
        assertThat(DayAudit.audit(problem, first.state(), first.plan()).inFact()).isEqualTo(first.news().inFact());

        // and when the repair is written down and the day goes on
        Span stood = span(first, "A/stand-out");
        lines.add(line(stood.end(), "A/stand-out", DayWord.DONE));
        Problem base = DayProblem.repaired(problem, first.state().repairs());
        Replanned second = Replan.replan(base, first.plan(), first.state(), new DayLog(lines, List.of(), List.of()), stood.end() + 1, SHORT,
                SearchListener.SILENT);

        // then
        assertThat(span(second, "A/stand-out")).isEqualTo(stood);
        assertThat(second.state().repairs()).containsExactly("A/stand-out");
        assertThat(second.plan().findings()).isEqualTo(second.news().inFact());
        assertThat(DayProblem.whole(problem, second.state(), second.plan().timetable())).isEqualTo(second.problem());
    }
}
