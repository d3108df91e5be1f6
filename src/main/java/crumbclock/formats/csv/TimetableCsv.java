package crumbclock.formats.csv;

import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The timetable as a table for spreadsheets: one row for each stretch of somebody's work, each touch, each step that
 * runs by itself, each oven run and each full clean; by start, then end, kind, step and person.
 */
public final class TimetableCsv {

    private static final List<String> HEADER = List.of("start", "end", "start_minute", "end_minute", "kind", "orders",
            "item", "title", "step_id", "step", "person", "place", "sound");

    private final Plan plan;
    private final OutCells cells;
    private final Map<String, Step> steps;
    private final Map<String, PlacedStep> placed;
    private final Problem problem;
    private final List<Row> rows = new ArrayList<>();

    private record Row(Span when, String kind, String stepId, String name, String personId, String place) {
    }

    private TimetableCsv(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        this.cells = new OutCells(problem);
        this.steps = problem.steps().stream().collect(Collectors.toMap(Step::id, step -> step, (one, two) -> one));
        this.placed = plan.timetable().steps().stream()
                .collect(Collectors.toMap(PlacedStep::stepId, step -> step, (one, two) -> one));
    }

    /** @return RFC 4180 text with a header, ends of lines CR LF */
    public static String write(Problem problem, Plan plan) {
        return new TimetableCsv(problem, plan).write();
    }

    private String write() {
        plan.timetable().steps().forEach(this::step);
        plan.timetable().touches().forEach(this::touch);
        plan.timetable().ovenRuns().forEach(this::ovenRun);
        plan.timetable().cleanings().forEach(this::cleaning);
        return OutCells.table(HEADER, rows.stream().sorted(Comparator.comparing(Row::when).thenComparing(Row::kind)
                .thenComparing(Row::stepId).thenComparing(Row::personId).thenComparing(Row::place))
                .map(this::cells).toList());
    }

    private List<Object> cells(Row row) {
        String owner = steps.containsKey(row.stepId()) ? steps.get(row.stepId()).ownerId() : "";
        return List.of(cells.time(row.when().start()), cells.time(row.when().end()), row.when().start(),
                row.when().end(), row.kind(), cells.orders(owner), owner, cells.title(owner), row.stepId(), row.name(),
                row.personId(), row.place(), plan.isSound() ? "yes" : "no");
    }

    private void step(PlacedStep step) {
        if (step.work().isEmpty()) {
            rows.add(new Row(step.span(), "by itself", step.stepId(), name(step.stepId()), "", place(step)));
        }
        for (PersonWork work : step.work()) {
            work.spans().forEach(span -> rows.add(new Row(span, "work", step.stepId(), name(step.stepId()),
                    work.personId(), place(step))));
        }
    }

    private void touch(PlacedTouch touch) {
        String place = placed.containsKey(touch.stepId()) ? place(placed.get(touch.stepId())) : "";
        rows.add(new Row(touch.when(), touch.at() == TouchEnd.PUT_IN ? "put in" : "take out", touch.stepId(),
                name(touch.stepId()), touch.personId(), place));
    }

    private void ovenRun(OvenRun run) {
        String name = run.temperatureC() + " °C";
        rows.add(new Row(new Span(run.from(), run.readyAt()), "heat up", "", name, "", run.cavityId()));
        rows.add(new Row(new Span(run.readyAt(), run.until()), "oven on", "", name, "", run.cavityId()));
    }

    private void cleaning(Cleaning cleaning) {
        rows.add(new Row(cleaning.when(), "full clean", "", "", "", unit(cleaning.poolId(), cleaning.unit())));
    }

    private String name(String stepId) {
        var step = steps.get(stepId);
        return step == null ? "" : step.part().isEmpty() ? step.name() : step.name() + " (" + step.part() + ")";
    }

    /** Oven with racks, store with shelves, surface and equipment, as far as the step has them. */
    private String place(PlacedStep step) {
        List<String> places = new ArrayList<>();
        if (!step.cavityId().isEmpty()) {
            places.add(step.cavityId() + plan.timetable().pans().stream()
                    .filter(pan -> pan.stepId().equals(step.stepId())).map(pan -> pan.rack() + 1).distinct().sorted()
                    .map(rack -> " rack " + rack).collect(Collectors.joining(",")));
        }
        plan.timetable().placements().stream().filter(place -> place.stepId().equals(step.stepId()))
                .map((Placement place) -> place.storeId() + " " + place.shelfId()).distinct().forEach(places::add);
        if (!step.surfaceId().isEmpty()) {
            places.add(step.surfaceId());
        }
        step.units().forEach(unit -> places.add(unit(unit.poolId(), unit.unit())));
        return String.join("; ", places);
    }

    private String unit(String poolId, int unit) {
        return problem.kitchen().pools().stream().anyMatch(pool -> pool.id().equals(poolId) && pool.count() == 1)
                ? poolId : poolId + " " + (unit + 1);
    }
}
