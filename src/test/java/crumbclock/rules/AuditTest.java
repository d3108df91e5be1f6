package crumbclock.rules;

import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.fixture.TimetableBuilder.copyOf;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.fixture.TwoCakeMonday;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AuditTest {

    @Test
    void should_tell_the_cost_of_lateness_and_of_every_wish() {
        var result = Audit.audit(TwoCakeMonday.problem(), TwoCakeMonday.timetable());

        assertThat(result.cost()).extracting(CostLine::name)
                .containsExactly("lateness", "W01", "W02", "W03", "W04", "W05", "W06", "W07");
        assertThat(result.cost()).filteredOn(CostLine::medium).extracting(CostLine::name).containsExactly("lateness");
        assertThat(result.mediumCost()).isZero();
        assertThat(result.softCost()).isEqualTo(result.cost().stream().mapToLong(CostLine::points).sum());
    }

    @Test
    void should_tell_how_far_a_plan_is_from_the_one_that_people_have() {
        var known = KeptPlan.of(TwoCakeMonday.timetable(), 500);
        var problem = TwoCakeMonday.problem().withKept(known);

        assertThat(known.steps()).isNotEmpty().allMatch(step -> step.start() >= 500);
        assertThat(line(Audit.audit(problem, TwoCakeMonday.timetable()).cost(), "W08"))
                .isEqualTo(new CostLine("W08", "keep to the known plan", false, 0, 0));
        // B is handed over 60 min later than known, five hours and more after 500, by the same person
        var told = known.steps().stream().filter(step -> step.stepId().equals("B/hand")).findFirst().orElseThrow();
        var moved = copyOf(TwoCakeMonday.timetable()).changeStep("B/hand", step -> new PlacedStep("B/hand",
                told.start() + 60, told.start() + 65,
                List.of(new PersonWork("ben", List.of(new Span(told.start() + 60, told.start() + 65)))), List.of(), "", "")).build();
        assertThat(line(Audit.audit(problem, moved).cost(), "W08").points()).isEqualTo(60 * 2 * 2);
    }

    /** Worked by hand from the fixture's times and the default weights. */
    @Test
    void should_cost_what_can_be_worked_out_by_hand() {
        var cost = Audit.audit(TwoCakeMonday.problem(), TwoCakeMonday.timetable()).cost();

        // order A is ready 10 min before the driver loads and wishes for 30; B has its 10
        assertThat(line(cost, "W01")).isEqualTo(new CostLine("W01", "a buffer before the hand-over", false, 20 * 4, 1));
        // the bake ends at 560, the hand-over is at 850, the wish 240
        assertThat(line(cost, "W02").points()).isEqualTo(850 - 560 - 240);
        // ana is busy from 480 to 880, ben from 480 to 855; nobody early or late
        assertThat(line(cost, "W03").points()).isEqualTo(400 + 375);
        // ana: mix A, mix B (cake), coat A (kind, cake), box A (kind), deliver (cake); ben: whip, coat (kind, cake),
        // box (kind), hand over (cake)
        assertThat(line(cost, "W04").points()).isEqualTo(4 * 5 + 5 * 3);
        assertThat(line(cost, "W05").points()).isEqualTo(60 + 150);
        assertThat(line(cost, "W06")).isEqualTo(new CostLine("W06", "shelves easy to reach", false, 0, 0));
        assertThat(line(cost, "W07").points()).isZero();
    }

    @Test
    void should_cost_lateness_above_all() {
        var late = copyOf(TwoCakeMonday.timetable())
                .changeStep("B/hand", step -> new PlacedStep("B/hand", 910, 915,
                        List.of(new PersonWork("ben", List.of(new Span(910, 915)))), List.of(), "", ""))
                .changeOutcome("B", told -> new Outcome("B", true, 840, 910, 70, 10, List.of(), List.of())).build();

        var result = Audit.audit(TwoCakeMonday.problem(), late);

        assertThat(result.findings()).isEmpty();
        assertThat(result.mediumCost()).isEqualTo(10 * 100 + 5000);
        assertThat(line(result.cost(), "lateness").matches()).isEqualTo(1);
    }

    @Test
    void should_say_what_where_and_when() {
        var broken = copyOf(TwoCakeMonday.timetable())
                .changePans("B1/bake", pan -> new PanPlace("B1/bake", 0, "deck", 0, 381, 20, false)).build();

        assertThat(Audit.audit(TwoCakeMonday.problem(), broken).findings()).containsExactly(new Finding(Rule.R07,
                List.of("B1/bake"), "deck, rack 1", new Span(575, 625),
                "pan 0 of B1/bake does not stand wholly on the rack of 600 × 400 mm with 20 mm to the walls"));
    }

    @Test
    void should_find_everything_missing_in_an_empty_timetable() {
        assertThat(Audit.audit(TwoCakeMonday.problem(), aTimetable().build()).findings())
                .extracting(Finding::rule).containsOnly(Rule.R15, Rule.R17);
    }

    @Test
    void should_sort_findings_and_repeat_itself() {
        var random = new Random(11);
        for (int i = 0; i < 20; i++) {
            Timetable timetable = garbled(random);
            var findings = Audit.audit(TwoCakeMonday.problem(), timetable).findings();

            assertThat(findings).isSortedAccordingTo(Comparator.comparing(Finding::rule).thenComparing(Finding::when));
            assertThat(Audit.audit(TwoCakeMonday.problem(), timetable).findings()).isEqualTo(findings);
        }
    }

    @Test
    void should_never_throw_on_a_wrong_timetable() {
        for (int seed = 0; seed < 300; seed++) {
            Timetable timetable = garbled(new Random(seed));

            assertThat(Audit.audit(TwoCakeMonday.problem(), timetable).findings()).as("seed %d", seed).isNotEmpty();
        }
    }

    private static CostLine line(List<CostLine> cost, String name) {
        return cost.stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow();
    }

    /** The sound timetable with references into nowhere, doubles, losses and minutes that cannot be. */
    private static Timetable garbled(Random random) {
        Timetable sound = TwoCakeMonday.timetable();
        TimetableBuilder builder = copyOf(sound);
        for (PlacedStep step : sound.steps()) {
            if (random.nextInt(4) == 0) {
                builder.changeStep(step.stepId(), same -> garbled(same, random));
            }
            if (random.nextInt(8) == 0) {
                builder.withoutStep(step.stepId());
            } else if (random.nextInt(8) == 0) {
                builder.step(step.stepId(), step.start() + 7, step.end() + 7);
            }
        }
        builder.step(anyId(random), anyMinute(random), anyMinute(random));
        builder.touch(anyId(random), TouchEnd.values()[random.nextInt(2)], anyId(random), -5, 5);
        builder.pan(new PanPlace(anyId(random), random.nextInt(4) - 1, anyId(random), random.nextInt(4) - 1,
                anyMinute(random), anyMinute(random), random.nextBoolean()));
        builder.placement(new Placement(anyId(random), random.nextInt(4) - 1, anyId(random), anyId(random),
                anyMinute(random), anyMinute(random), random.nextBoolean(), new Span(Integer.MIN_VALUE, 700)));
        builder.changeTouch("A1/bake", TouchEnd.PUT_IN,
                touch -> new PlacedTouch(touch.stepId(), touch.at(), anyId(random), new Span(Integer.MIN_VALUE, Integer.MAX_VALUE)));
        builder.changeRuns(run -> new OvenRun(anyId(random), anyMinute(random), anyMinute(random), anyMinute(random),
                anyMinute(random)));
        builder.cleaning(anyId(random), random.nextInt(4) - 1, 0, 100);
        builder.made(anyId(random), anyMinute(random), anyMinute(random), anyMinute(random), anyMinute(random));
        return builder.build();
    }

    private static PlacedStep garbled(PlacedStep step, Random random) {
        List<PersonWork> work = new ArrayList<>(step.work());
        if (random.nextBoolean()) {
            int end = anyMinute(random);
            work.add(new PersonWork(anyId(random), List.of(new Span(Integer.MIN_VALUE, end), new Span(end, end))));
        }
        if (random.nextInt(3) == 0) {
            work.add(new PersonWork(anyId(random), List.of()));
        }
        List<UnitUse> units = List.of(new UnitUse(anyId(random), random.nextInt(4) - 1, anyMinute(random), anyMinute(random)));
        return new PlacedStep(step.stepId(), random.nextInt(3) == 0 ? anyMinute(random) : step.start(),
                random.nextInt(3) == 0 ? anyMinute(random) : step.end(), work, units, anyId(random), anyId(random));
    }

    private static String anyId(Random random) {
        String[] ids = {"", "nowhere", "deck", "fridge", "top", "bowl", "rack", "ana", "ben", "A1/bake", "A1/chill",
            "B1/coat", "A", "B", "A1"};
        return ids[random.nextInt(ids.length)];
    }

    private static int anyMinute(Random random) {
        int[] minutes = {Integer.MIN_VALUE, -100_000_000, -1, 0, 500, 720, 2880, 100_000_000, Integer.MAX_VALUE};
        return minutes[random.nextInt(minutes.length)];
    }
}
