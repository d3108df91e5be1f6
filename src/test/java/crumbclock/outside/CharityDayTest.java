package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
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

    /** A short search: some orders may still be left out, which rule R17 then tells; nothing else is broken. */
    @BeforeAll
    static void planTheDay() {
        problem = ProblemReader.read(Path.of("problems", "charity-day.json"), new IssueLog()).orElseThrow();
        plan = Searched.of(problem, 1, 100);
        assertThat(plan.audit().findings()).allSatisfy(finding -> {
            assertThat(finding.rule()).as(finding.message()).isEqualTo(Rule.R17);
            assertThat(finding.items()).isSubsetOf(leftOut());
        });
    }

    private static List<String> leftOut() {
        return plan.result().timetable().outcomes().stream().filter(outcome -> !outcome.possible()).map(Outcome::orderId).toList();
    }

    /** Five bowls of batter at 25 minutes and four of icing at 22: 125 + 88. */
    @Test
    void should_mix_for_213_minutes_one_bowl_at_a_time() {
        List<Step> bowls = problem.steps().stream()
                .filter(step -> step.equipment().stream().anyMatch(need -> need.poolId().equals("mixer"))).toList();
        List<Step> wanted = bowls.stream().filter(bowl -> problem.orders().stream()
                .anyMatch(order -> !leftOut().contains(order.id()) && order.cakes().get(0).batchIds().contains(bowl.ownerId()))).toList();
        List<Span> mixed = bowls.stream().filter(CharityDayTest::isPlanned).map(bowl -> plan.step(bowl.id()).span()).sorted().toList();

        assertThat(bowls).hasSize(9);
        assertThat(minutes(bowls)).isEqualTo(5 * 25 + 4 * 22).isEqualTo(213);
        assertThat(mixed.stream().mapToInt(Span::minutes).sum()).isEqualTo(minutes(wanted));
        // nobody who bakes is there before 08:45, a quarter of an hour after the start
        assertThat(mixed.get(0).start()).isGreaterThanOrEqualTo(15);
        assertThat(mixed.get(mixed.size() - 1).end()).isGreaterThanOrEqualTo(15 + minutes(wanted));
        for (int next = 1; next < mixed.size(); next++) {
            assertThat(mixed.get(next).start()).isGreaterThanOrEqualTo(mixed.get(next - 1).end());
        }
    }

    private static int minutes(List<Step> bowls) {
        return bowls.stream().mapToInt(bowl -> bowl.handsOn().orElseThrow().minutes()).sum();
    }

    private static boolean isPlanned(Step step) {
        return plan.result().timetable().steps().stream().anyMatch(placed -> placed.stepId().equals(step.id()));
    }

    /** From 08:45: mix, deposit, bake, take out, rest in the pan, turn out, cool, fill, each as short as it can be. */
    @Test
    void should_coat_no_cake_before_its_batter_can_be_baked_cooled_and_filled() {
        Map<String, Integer> earliest = earliestStarts();
        int restInPan = problem.waits().stream().filter(wait -> wait.toStepId().equals("B01/turn-out"))
                .mapToInt(Wait::leastMinutes).max().orElseThrow();
        int firstCoat = 15 + 25 + restInPan + List.of("deposit", "bake", "turn-out", "cool", "fill").stream()
                .mapToInt(name -> shortest(step("B01/" + name))).sum();

        assertThat(coats()).hasSize(32).allSatisfy(coat -> assertThat(earliest.get(coat.id())).as(coat.id())
                .isEqualTo(firstCoat));
        assertThat(coated()).isNotEmpty().allSatisfy(coat -> assertThat(plan.start(coat.id())).as(coat.id())
                .isGreaterThanOrEqualTo(earliest.get(coat.id())));
    }

    /** So many bowls of batter cannot be out of the mixer before 08:45 and 25 minutes for each, whatever is mixed first. */
    @Test
    void should_coat_the_last_bowls_cakes_no_earlier_than_the_mixer_allows() {
        Map<String, Integer> earliest = earliestStarts();
        int firstBowl = coated().stream().mapToInt(coat -> earliest.get(coat.id())).min().orElseThrow();
        long batters = problem.steps().stream().filter(step -> step.id().startsWith("batter") && isPlanned(step)).count();
        int lastCoat = coated().stream().mapToInt(coat -> plan.start(coat.id())).max().orElseThrow();

        assertThat(batters).isPositive();
        assertThat(lastCoat).isGreaterThanOrEqualTo(firstBowl + 25 * ((int) batters - 1));
    }

    private static List<Step> coats() {
        return problem.steps().stream().filter(step -> step.id().endsWith("/coat")).toList();
    }

    private static List<Step> coated() {
        return coats().stream().filter(CharityDayTest::isPlanned).toList();
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
