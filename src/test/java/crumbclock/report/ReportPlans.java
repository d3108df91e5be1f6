package crumbclock.report;

import static crumbclock.report.ReportFixture.fri;
import static crumbclock.report.ReportFixture.sat;
import static crumbclock.report.ReportFixture.span;

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
import crumbclock.units.Span;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Plans made by hand for {@link ReportFixture#problem()}. */
public final class ReportPlans {

    private static final List<Placement> PLACEMENTS = List.of(
            place("B1/keep", "fridge", "F2", 300, 150, fri(18, 25), fri(20, 8)),
            place("A1/1/chill", "fridge", "F2", 0, 0, fri(19, 40), fri(20, 8)),
            place("A1/1/hold", "fridge", "F2", 0, 0, fri(20, 23), sat(8, 0)),
            place("A2/1/set", "fridge", "F1", 185, 10, fri(20, 52), sat(8, 40)),
            place("A1/1/stand", "cupboard", "C1", 20, 180, sat(8, 36), sat(10, 0)));

    private ReportPlans() {
    }

    /** The sound plan: A1 on time, A2 late by 25 minutes, A3 not possible. */
    public static Plan sound() {
        return plan(List.of());
    }

    /** The same, with what an audit might have found. */
    public static Plan unsound() {
        return plan(List.of(
                new Finding(Rule.R10, List.of("A2/1/set"), "Fridge, F1", span(fri(20, 52), sat(8, 0)),
                        "board <305> mm and milk stand 20 mm apart, 25 mm are needed"),
                new Finding(Rule.R04, List.of("A1/1/bake"), "Odette", span(fri(17, 57), fri(17, 59)),
                        "two touches at once")));
    }

    public static Plan of(Timetable timetable) {
        return new Plan("Three for Saturday", timetable, List.of(), List.of(), 0, 0, new Plan.SearchNote(7, 1));
    }

    public static Timetable emptyTimetable() {
        return new Timetable(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** Names steps, pieces, shelves and racks that the problem does not have. */
    public static Timetable strangeTimetable() {
        String id = "no-such-step";
        return new Timetable(List.of(new PlacedStep(id, fri(18, 0), fri(18, 10), List.of(
                        new PersonWork("odette", List.of(span(fri(18, 0), fri(18, 10))))),
                        List.of(new UnitUse("no-such-pool", 3, fri(18, 0), fri(18, 10))), "no-such-bench", "oven")),
                List.of(touch(id, TouchEnd.TAKE_OUT, "odette", fri(18, 20), 1)),
                List.of(new OvenRun("no-such-oven", 175, fri(17, 0), fri(17, 10), fri(18, 0))),
                List.of(new PanPlace(id, 0, "oven", 9, 0, 0, false),
                        new PanPlace("A1/1/bake", 7, "oven", 0, 0, 0, false)),
                List.of(place(id, "fridge", "F1", 0, 0, fri(18, 0), fri(19, 0)),
                        place("A1/1/chill", "fridge", "no-such-shelf", 0, 0, fri(18, 0), fri(19, 0))),
                List.of(new Cleaning("no-such-pool", 0, span(fri(18, 0), fri(18, 30)))),
                List.of(new Outcome("A1", true, 0, 0, 0, 0, List.of(), List.of(id))));
    }

    private static Plan plan(List<Finding> findings) {
        var outcomes = List.of(
                new Outcome("A1", true, sat(8, 36), sat(10, 0), 84, 0, List.of(),
                        List.of("A1/1/hold", "A1/1/write")),
                new Outcome("A2", true, sat(11, 35), sat(12, 55), 45, 25, List.of(new Outcome.Reason(Rule.R03,
                        "Odette has a break 09:30–10:00 while the paste should go on, and nobody else covers cakes")),
                        List.of("A2/1/set", "A2/1/cover", "A2/1/box", "A2/deliver")),
                new Outcome("A3", false, -1, -1, 0, 0, List.of(new Outcome.Reason(Rule.R01,
                        "peonies dry twice for 12 h, which is longer than the 21 h that are left")), List.of()));
        var timetable = new Timetable(steps(), touches(), List.of(
                new OvenRun("oven", 175, fri(17, 10), fri(17, 25), fri(17, 59)),
                new OvenRun("oven", 165, fri(17, 59), fri(18, 8), fri(19, 0))), pans(), PLACEMENTS,
                List.of(new Cleaning("bowl", 1, span(fri(18, 30), fri(18, 55)))), outcomes);
        return new Plan("Three for Saturday", timetable, findings, List.of(
                new CostLine("lateness", "lateness", true, 12_500, 1),
                new CostLine("W01", "a buffer before the hand-over", false, 300, 1),
                new CostLine("W03", "few, even and ordinary hours", false, 921, 3)), 12_500, 1_221,
                new Plan.SearchNote(7, 4_200), Optional.of(new LowerBound(6_000, 12, sat(13, 17), false, List.of(
                        new OrderBound("A1", true, sat(8, 6), sat(10, 0), 0),
                        new OrderBound("A2", true, sat(11, 22), sat(12, 42), 12),
                        new OrderBound("A3", false, -1, -1, 0)))));
    }

    private static List<PlacedStep> steps() {
        return sorted(List.of(
                work("A1/1/mix", "bowl", 0, "odette", span(fri(17, 5), fri(17, 25))),
                oven("A1/1/bake", fri(17, 25), fri(17, 59)),
                onRack("A1/1/cool", fri(17, 59), fri(19, 10)),
                work("A1/1/fill", "", 0, "odette", span(fri(19, 10), fri(19, 35))),
                rest("A1/1/chill", fri(19, 40), fri(20, 8)),
                work("A1/1/coat", "", 0, "odette", span(fri(20, 8), fri(20, 23))),
                rest("A1/1/hold", fri(20, 23), sat(8, 0)),
                work("A1/1/write", "", 0, "odette", span(sat(8, 0), sat(8, 30))),
                work("A1/1/box", "", 0, "odette", span(sat(8, 30), sat(8, 36))),
                rest("A1/1/stand", sat(8, 36), sat(10, 0)),
                work("A1/hand-over", "", 0, "odette", span(sat(10, 0), sat(10, 5))),
                work("A2/1/mix", "bowl", 0, "odette", span(fri(17, 30), fri(17, 55))),
                oven("A2/1/bake", fri(18, 8), fri(18, 54)),
                onRack("A2/1/cool", fri(18, 54), fri(20, 30)),
                new PlacedStep("A2/1/coat", fri(20, 30), fri(20, 50), List.of(
                        new PersonWork("odette", List.of(span(fri(20, 30), fri(20, 50)))),
                        new PersonWork("pell", List.of(span(fri(20, 30), fri(20, 50))))), List.of(), "", ""),
                rest("A2/1/set", fri(20, 52), sat(8, 40)),
                work("A2/1/cover", "", 0, "odette", span(sat(9, 10), sat(9, 30)), span(sat(10, 5), sat(10, 35))),
                work("A2/1/box", "", 0, "odette", span(sat(11, 35), sat(11, 45))),
                work("A2/deliver", "car", 0, "odette", span(sat(12, 20), sat(13, 30))),
                work("B1/whip", "bowl", 1, "pell", span(fri(18, 5), fri(18, 25))),
                rest("B1/keep", fri(18, 25), fri(20, 8))));
    }

    private static List<PlacedStep> sorted(List<PlacedStep> steps) {
        return steps.stream().sorted(Comparator.comparing(PlacedStep::span).thenComparing(PlacedStep::stepId)).toList();
    }

    private static List<PlacedTouch> touches() {
        return List.of(
                touch("A1/1/bake", TouchEnd.PUT_IN, "odette", fri(17, 25), 2),
                touch("A1/1/bake", TouchEnd.TAKE_OUT, "odette", fri(17, 57), 2),
                touch("A2/1/bake", TouchEnd.PUT_IN, "odette", fri(18, 8), 2),
                touch("B1/keep", TouchEnd.PUT_IN, "pell", fri(18, 25), 1),
                touch("A2/1/bake", TouchEnd.TAKE_OUT, "odette", fri(18, 52), 2),
                touch("A1/1/chill", TouchEnd.PUT_IN, "odette", fri(19, 40), 1),
                touch("A1/1/chill", TouchEnd.TAKE_OUT, "odette", fri(20, 7), 1),
                touch("B1/keep", TouchEnd.TAKE_OUT, "pell", fri(20, 7), 1),
                touch("A1/1/hold", TouchEnd.PUT_IN, "odette", fri(20, 23), 2),
                touch("A2/1/set", TouchEnd.PUT_IN, "pell", fri(20, 52), 2),
                touch("A1/1/hold", TouchEnd.TAKE_OUT, "odette", sat(7, 58), 2),
                touch("A1/1/stand", TouchEnd.PUT_IN, "odette", sat(8, 36), 1),
                touch("A2/1/set", TouchEnd.TAKE_OUT, "odette", sat(8, 38), 2),
                touch("A1/1/stand", TouchEnd.TAKE_OUT, "odette", sat(9, 59), 1));
    }

    private static List<PanPlace> pans() {
        return List.of(new PanPlace("A1/1/bake", 0, "oven", 0, 15, 15, false),
                new PanPlace("A1/1/bake", 1, "oven", 0, 229, 129, false),
                new PanPlace("A1/1/bake", 2, "oven", 1, 122, 72, false),
                new PanPlace("A2/1/bake", 0, "oven", 0, 97, 47, false),
                new PanPlace("A2/1/bake", 1, "oven", 1, 97, 47, false));
    }

    private static PlacedStep work(String id, String poolId, int unit, String personId, Span... spans) {
        int start = spans[0].start();
        int end = spans[spans.length - 1].end();
        var units = poolId.isEmpty() ? List.<UnitUse>of() : List.of(new UnitUse(poolId, unit, start, end));
        return new PlacedStep(id, start, end, List.of(new PersonWork(personId, Arrays.asList(spans))), units, "", "");
    }

    private static PlacedStep rest(String id, int start, int end) {
        return new PlacedStep(id, start, end, List.of(), List.of(), "", "");
    }

    private static PlacedStep onRack(String id, int start, int end) {
        return new PlacedStep(id, start, end, List.of(), List.of(), "rack", "");
    }

    private static PlacedStep oven(String id, int start, int end) {
        return new PlacedStep(id, start, end, List.of(), List.of(), "", "oven");
    }

    private static PlacedTouch touch(String id, TouchEnd at, String personId, int start, int minutes) {
        return new PlacedTouch(id, at, personId, span(start, start + minutes));
    }

    private static Placement place(String id, String store, String shelf, int x, int y, int from, int until) {
        return new Placement(id, 0, store, shelf, x, y, false, span(from, until));
    }
}
