package crumbclock.formats.plan;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Span;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlanJsonTest {

    private static final Problem PROBLEM = problem();
    private static final Plan PLAN = plan();

    private static Problem problem() {
        var clock = new ProblemClock(LocalDateTime.parse("2026-10-24T20:00").atZone(ZoneId.of("Europe/London")), 1440);
        var round = new Footprint(true, 203, 203);
        var mix = new Step("A1/mix", "mix", "A1", "", StepKind.HANDS_ON, Optional.of(new HandsOn(20, 1, "", "mixing", true, false, false)),
                0, 0, Optional.empty(), Optional.empty(), false, List.of(), Optional.empty(), Optional.empty(), Set.of(), Set.of(), 0);
        var bake = new Step("A1/bake", "bake", "A1", "", StepKind.UNATTENDED, Optional.empty(), 30, 35, Optional.empty(), Optional.empty(), true,
                List.of(), Optional.of(new OvenUse(175, List.of(new Pan(round, 50), new Pan(round, 50)), 20, 0)), Optional.empty(), Set.of(), Set.of(), 0);
        var hold = new Step("A1/hold", "hold", "A1", "", StepKind.UNATTENDED, Optional.empty(), 30, 600, Optional.empty(), Optional.empty(), false,
                List.of(), Optional.empty(), Optional.of(new PlaceNeed(new Form("cake", round, 100, 1500, 1, 20, true, false), List.of(PlaceKind.FRIDGE))),
                Set.of(), Set.of(), 0);
        var kitchen = new Kitchen("K", List.of(new Person("ada", "Ada", List.of(), List.of(), Set.of(), Map.of(), 600)),
                List.of(new Cavity("deck/upper", "Deck", List.of(new Rack(500, 400, 120), new Rack(500, 400, 120)), 50, 250, 15, 1, 2, 30, 20, 20, List.of())),
                List.of(new Store("fridge", "Fridge", PlaceKind.FRIDGE, 20, 10, 25, false, List.of(new Shelf("top", "top", 500, 400, 200, 9000, Set.of(), List.of())), List.of())),
                List.of(new Surface("bench", "Bench", PlaceKind.BENCH, 500_000, List.of())),
                List.of(new Pool("bowl", "Bowl", 2, 4800, 5, 15, Map.of(), List.of())), List.of(new Span(0, 1440)));
        var orders = List.of(new Order("A1", "A1", List.of(), new HandOver(HandOverWay.SET_ASIDE, "", 0, 900, 960), 1, 60),
                new Order("B2", "B2", List.of(), new HandOver(HandOverWay.SET_ASIDE, "", 0, 900, 960), 1, 60));
        return new Problem("Clock \"change\"", clock, kitchen, orders, List.of(), List.of(mix, bake, hold), List.of(), List.of(), List.of(), List.of(),
                List.of(), Weights.DEFAULT);
    }

    private static Plan plan() {
        var steps = List.of(
                new PlacedStep("A1/mix", 0, 40, List.of(new PersonWork("ada", List.of(new Span(0, 10), new Span(30, 40)))),
                        List.of(new UnitUse("bowl", 1, 0, 40)), "bench", ""),
                new PlacedStep("A1/bake", 40, 75, List.of(), List.of(), "", "deck/upper"),
                new PlacedStep("A1/hold", 300, 420, List.of(), List.of(), "", ""));
        var timetable = new Timetable(steps, List.of(new PlacedTouch("A1/bake", TouchEnd.PUT_IN, "ada", new Span(40, 42)),
                        new PlacedTouch("A1/bake", TouchEnd.TAKE_OUT, "ada", new Span(73, 75))),
                List.of(new OvenRun("deck/upper", 175, 20, 38, 75)),
                List.of(new PanPlace("A1/bake", 0, "deck/upper", 0, 20, 20, false), new PanPlace("A1/bake", 1, "deck/upper", 1, 20, 30, true)),
                List.of(new Placement("A1/hold", 0, "fridge", "top", 12, 34, true, new Span(300, 420))),
                List.of(new Cleaning("bowl", 1, new Span(45, 60))),
                List.of(new Outcome("A1", true, 420, 420, 540, 0, List.of(), List.of("A1/bake", "A1/hold")),
                        new Outcome("B2", false, -1, -1, 0, 0, List.of(new Outcome.Reason(Rule.R03, "nobody is there")), List.of())));
        return new Plan("Clock \"change\"", timetable, List.of(new Finding(Rule.R17, List.of("B2"), "", new Span(0, 0), "B2: not made")),
                List.of(new CostLine("lateness", "lateness", true, 100_000_000, 1), new CostLine("W05", "oven used well", false, 115, 2)),
                100_000_000, 115, new Plan.SearchNote(-7, 12_345), Optional.of(new LowerBound(100_000_000, 0, 410, false,
                        List.of(new OrderBound("A1", true, 410, 410, 0), new OrderBound("B2", false, -1, -1, 0)))));
    }

    private static List<String> issuesOf(String text) {
        var log = new IssueLog();
        assertThat(PlanJson.read("plan.json", text, PROBLEM, log)).isEmpty();
        return log.sorted().stream().map(Issue::toString).toList();
    }

    @Test
    void should_come_back_as_it_was_written() {
        var log = new IssueLog();

        var read = PlanJson.read("plan.json", PlanJson.write(PROBLEM, PLAN), PROBLEM, log);

        assertThat(log.sorted()).isEmpty();
        assertThat(read).contains(PLAN);
    }

    @Test
    void should_write_equal_text_with_clock_times_beside_the_minutes() {
        String text = PlanJson.write(PROBLEM, PLAN);

        assertThat(text).isEqualTo(PlanJson.write(problem(), plan())).doesNotContain("\r").endsWith("}\n");
        assertThat(text).startsWith("{\n  \"problem\": \"Clock \\\"change\\\"\",\n  \"sound\": false,\n  \"start\": \"2026-10-24T20:00:00+01:00\",\n"
                + "  \"search\": { \"seed\": -7, \"schedules\": 12345 },\n");
        assertThat(text).as("minute 420 lies behind the hour that comes twice").contains("\n    { \"step\": \"A1/hold\", \"piece\": 1, "
                + "\"store\": \"fridge\", \"shelf\": \"top\", \"x\": 12, \"y\": 34, \"turned\": true, \"from\": 300, \"until\": 420, "
                + "\"fromAt\": \"2026-10-25T01:00\", \"untilAt\": \"2026-10-25T02:00\" }\n");
    }

    @Test
    void should_sort_again_what_was_put_elsewhere_by_hand() {
        // given: the same plan with its steps the other way round
        var table = PLAN.timetable();
        var turned = new Timetable(List.of(table.steps().get(2), table.steps().get(1), table.steps().get(0)),
                List.of(table.touches().get(1), table.touches().get(0)), table.ovenRuns(), table.pans(), table.placements(), table.cleanings(), table.outcomes());
        var mixedUp = new Plan(PLAN.problemTitle(), turned, PLAN.findings(), PLAN.cost(), PLAN.mediumCost(), PLAN.softCost(), PLAN.search(), PLAN.bound());

        // then
        assertThat(PlanJson.read("plan.json", PlanJson.write(PROBLEM, mixedUp), PROBLEM, new IssueLog())).contains(PLAN);
    }

    @Test
    void should_read_a_plan_that_is_not_sound() {
        // given: two steps of the same time, a step twice, hands outside every shift, a pan beside the rack
        String text = """
                { "problem": "Clock \\"change\\"",
                  "steps": [ { "step": "A1/mix", "start": -50, "end": 4000, "work": [{ "person": "ada", "spans": [{ "from": -50, "until": -50 }] }] },
                             { "step": "A1/mix", "start": 0, "end": 0 } ],
                  "pans": [ { "step": "A1/bake", "pan": 1, "cavity": "deck/upper", "rack": 1, "x": 9999, "y": -5 } ] }
                """;
        var log = new IssueLog();

        // then
        assertThat(PlanJson.read("plan.json", text, PROBLEM, log)).isPresent();
        assertThat(log.sorted()).isEmpty();
    }

    @Test
    void should_name_both_when_a_clock_time_and_its_minute_disagree() {
        String text = PlanJson.write(PROBLEM, PLAN).replace("\"startAt\": \"2026-10-24T20:40\"", "\"startAt\": \"2026-10-24T20:45\"");

        assertThat(issuesOf(text)).singleElement().asString().contains("/steps/1/startAt: read \"2026-10-24T20:45\"; "
                + "expected \"2026-10-24T20:40\", the clock time of \"start\": 40. Change both, or take the clock time out; the minute is what counts.");
    }

    @Test
    void should_report_what_cannot_be_a_plan_of_this_problem() {
        String text = """
                { "problem": "Another",
                  "steps": [ { "step": "A1/mixx", "start": 5, "end": 3, "work": [{ "person": "adda", "spans": [] }],
                               "units": [{ "pool": "bowl", "unit": 3, "from": 0, "until": 1 }], "surface": "bnch", "cavity": "deck" } ],
                  "pans": [ { "step": "A1/bake", "pan": 3, "cavity": "deck/upper", "rack": 3, "x": 0, "y": 0 },
                            { "step": "A1/mix", "pan": 1, "cavity": "deck/upper", "rack": 1, "x": 0, "y": 0 } ],
                  "placements": [ { "step": "A1/hold", "piece": 2, "store": "fridge", "shelf": "topp", "x": 0, "y": 0, "from": 0, "until": 1 } ] }
                """;

        assertThat(issuesOf(text)).containsExactly(
                "plan.json, line 1, /problem: read \"Another\"; expected \"Clock \"change\"\", the title of the problem it is read for. "
                        + "Name the problem file that the plan was made for, and its changes.",
                "plan.json, line 2, /steps/0/end: read 3; expected a minute not before \"start\", which is 5.",
                "plan.json, line 2, /steps/0/step: read \"A1/mixx\"; expected a step of the problem. Did you mean \"A1/mix\"?",
                "plan.json, line 2, /steps/0/work/0/person: read \"adda\"; expected a person of the kitchen. Did you mean \"ada\"?",
                "plan.json, line 3, /steps/0/cavity: read \"deck\"; expected an oven cavity of the kitchen. Known: deck/upper.",
                "plan.json, line 3, /steps/0/surface: read \"bnch\"; expected a surface of the kitchen. Did you mean \"bench\"?",
                "plan.json, line 3, /steps/0/units/0/unit: read 3; expected a piece of the pool from 1 to 2.",
                "plan.json, line 4, /pans/0/pan: read 3; expected a pan of the step from 1 to 2.",
                "plan.json, line 4, /pans/0/rack: read 3; expected a rack of the cavity from 1 to 2.",
                "plan.json, line 5, /pans/1/pan: read 1; expected nothing, there is no pan of the step.",
                "plan.json, line 6, /placements/0/piece: read 2; expected a piece of the step from 1 to 1.",
                "plan.json, line 6, /placements/0/shelf: read \"topp\"; expected a shelf of the store. Did you mean \"top\"?");
    }
}
