package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Span;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The charity day's plan against sums that its bottleneck, the one mixer, allows: from the problem's own records, with the longest
 * way through the waits and nothing else of the engine.
 */
class CharityDayTest {

    private static Problem problem;
    private static Searched plan;

    @BeforeAll
    static void planTheDay() {
        problem = ProblemReader.read(Path.of("problems", "charity-day.json"), new IssueLog()).orElseThrow();
        plan = Searched.of(problem, 1, 60).assertSound();
    }

    /** Five bowls of batter at 25 minutes and four of icing at 22: 125 + 88. */
    @Test
    void should_mix_for_213_minutes_one_bowl_at_a_time() {
        List<Span> bowls = mixing();

        assertThat(bowls).hasSize(9);
        assertThat(bowls.stream().mapToInt(Span::minutes).sum()).isEqualTo(5 * 25 + 4 * 22).isEqualTo(213);
        for (int next = 1; next < bowls.size(); next++) {
            assertThat(bowls.get(next).start()).isGreaterThanOrEqualTo(bowls.get(next - 1).end());
        }
        // nobody who bakes is there before 08:45, a quarter of an hour after the start
        assertThat(bowls.get(0).start()).isGreaterThanOrEqualTo(15);
        assertThat(bowls.get(8).end()).isGreaterThanOrEqualTo(15 + 213);
    }

    private static List<Span> mixing() {
        return problem.steps().stream().filter(step -> step.equipment().stream().anyMatch(need -> need.poolId().equals("mixer")))
                .map(step -> plan.step(step.id()).span()).sorted().toList();
    }

    /** From 08:45: mix 25, deposit 4, bake 31 and take out 1, rest 5, turn out 2, cool 65, fill 9 is 11:07. */
    @Test
    void should_coat_no_cake_before_its_batter_can_be_baked_cooled_and_filled() {
        Map<String, Integer> earliest = earliestStarts();

        assertThat(coats()).hasSize(32);
        assertThat(coats()).allSatisfy(coat -> assertThat(plan.start(coat.id())).as(coat.id())
                .isGreaterThanOrEqualTo(earliest.get(coat.id())));
        assertThat(coats()).allSatisfy(coat -> assertThat(earliest.get(coat.id()))
                .isGreaterThanOrEqualTo(15 + 25 + 4 + 32 + 5 + 2 + 65 + 9));
    }

    /** The fifth bowl of batter cannot be out of the mixer before 08:45 + 125 minutes, whatever is mixed first. */
    @Test
    void should_coat_the_last_bowls_cakes_no_earlier_than_five_bowls_allow() {
        int oneBowl = coats().stream().mapToInt(coat -> earliestStarts().get(coat.id())).min().orElseThrow();
        int lastCoat = coats().stream().mapToInt(coat -> plan.start(coat.id())).max().orElseThrow();

        assertThat(lastCoat).isGreaterThanOrEqualTo(oneBowl + 4 * 25);
    }

    private static List<Step> coats() {
        return problem.steps().stream().filter(step -> step.id().endsWith("/coat")).toList();
    }

    /** Longest way through steps and waits, with the first shift of whoever may do the work. */
    private static Map<String, Integer> earliestStarts() {
        Map<String, Integer> starts = new HashMap<>();
        problem.steps().forEach(step -> starts.put(step.id(), Math.max(step.earliest(), firstHands(step))));
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Wait wait : problem.waits()) {
                Step from = step(wait.fromStepId());
                int start = starts.get(from.id()) + shortest(from) + wait.leastMinutes();
                if (start > starts.get(wait.toStepId())) {
                    starts.put(wait.toStepId(), start);
                    changed = true;
                }
            }
        }
        return starts;
    }

    private static int firstHands(Step step) {
        return step.handsOn().map(work -> able(work).stream().mapToInt(person -> person.shifts().get(0).start()).min()
                .orElseThrow()).orElse(0);
    }

    private static int shortest(Step step) {
        return step.handsOn().map(work -> able(work).stream()
                        .mapToInt(person -> person.minutesAtOwnPace(work.workKind(), work.minutes())).min().orElseThrow())
                .orElse(step.putInMinutes() + step.leastMinutes() + step.takeOutMinutes());
    }

    private static List<Person> able(HandsOn work) {
        return problem.kitchen().people().stream()
                .filter(person -> person.mostMinutesADay() > 0 && person.hasSkill(work.skill())).toList();
    }

    private static Step step(String id) {
        return problem.steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
    }
}
