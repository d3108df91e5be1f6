package crumbclock.formats.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.json.JsonText;
import crumbclock.units.Span;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.BiConsumer;

/** A plan to JSON, with clock times beside the minutes for people. */
final class PlanWriter {

    private final Problem problem;
    private final ProblemCalendar calendar;

    PlanWriter(Problem problem) {
        this.problem = problem;
        this.calendar = new ProblemCalendar(problem.clock(), true);
    }

    String write(Plan plan, DayState state) {
        var root = JsonNodeFactory.instance.objectNode();
        root.put("problem", plan.problemTitle());
        root.put("sound", plan.isSound());
        root.put("start", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(problem.clock().start()));
        root.putObject("search").put("seed", plan.search().seed()).put("schedules", plan.search().schedules());
        root.put("mediumCost", plan.mediumCost());
        root.put("softCost", plan.softCost());
        list(root, "cost", plan.cost(), (line, node) -> node.put("name", line.name()).put("title", line.title())
                .put("medium", line.medium()).put("points", line.points()).put("matches", line.matches()));
        list(root, "findings", plan.findings(), (finding, node) -> {
            node.put("rule", finding.rule().name());
            strings(node, "items", finding.items());
            node.put("place", finding.place());
            span(node, finding.when());
            node.put("message", finding.message());
        });
        var timetable = plan.timetable();
        list(root, "outcomes", timetable.outcomes(), this::outcome);
        list(root, "steps", timetable.steps(), this::step);
        list(root, "touches", timetable.touches(), (touch, node) -> {
            node.put("step", touch.stepId());
            node.put("at", touch.at() == TouchEnd.PUT_IN ? StepConverter.PUT_IN : StepConverter.TAKE_OUT);
            node.put("person", touch.personId());
            span(node, touch.when());
        });
        list(root, "ovenRuns", timetable.ovenRuns(), this::ovenRun);
        list(root, "pans", timetable.pans(), (pan, node) -> node.put("step", pan.stepId()).put("pan", pan.pan() + 1)
                .put("cavity", pan.cavityId()).put("rack", pan.rack() + 1).put("x", pan.xMm()).put("y", pan.yMm())
                .put("turned", pan.turned()));
        list(root, "placements", timetable.placements(), (item, node) -> {
            node.put("step", item.stepId()).put("piece", item.piece() + 1).put("store", item.storeId()).put("shelf", item.shelfId())
                    .put("x", item.xMm()).put("y", item.yMm()).put("turned", item.turned());
            span(node, item.when());
        });
        list(root, "cleanings", timetable.cleanings(), (cleaning, node) -> {
            node.put("pool", cleaning.poolId()).put("unit", cleaning.unit() + 1);
            span(node, cleaning.when());
        });
        if (!state.equals(DayState.NONE)) {
            new DayWriter(calendar).write(state, root.putObject("day"));
        }
        plan.bound().ifPresent(bound -> bound(bound, root.putObject("bound")));
        return JsonText.write(root);
    }

    private void bound(LowerBound bound, ObjectNode node) {
        node.put("mediumCost", bound.medium());
        node.put("lateMinutes", bound.lateMinutes());
        node.put("end", bound.endMinute());
        node.put("endAt", calendar.show(bound.endMinute()));
        node.put("allPossible", bound.allPossible());
        list(node, "orders", bound.orders(), (order, inner) -> {
            inner.put("order", order.orderId());
            inner.put("possible", order.possible());
            inner.put("ready", order.readyMinute());
            inner.put("handOver", order.handMinute());
            if (order.possible()) {
                inner.put("readyAt", calendar.show(order.readyMinute()));
                inner.put("handOverAt", calendar.show(order.handMinute()));
            }
            inner.put("lateMinutes", order.lateMinutes());
        });
    }

    private void outcome(Outcome outcome, ObjectNode node) {
        node.put("order", outcome.orderId());
        node.put("possible", outcome.possible());
        node.put("ready", outcome.readyMinute());
        node.put("handOver", outcome.handMinute());
        if (outcome.possible()) {
            node.put("readyAt", calendar.show(outcome.readyMinute()));
            node.put("handOverAt", calendar.show(outcome.handMinute()));
        }
        node.put("bufferMinutes", outcome.bufferMinutes());
        node.put("lateMinutes", outcome.lateMinutes());
        list(node, "reasons", outcome.reasons(), (reason, inner) -> inner.put("rule", reason.rule().name())
                .put("message", reason.message()));
        strings(node, "waitsFor", outcome.waitsFor());
    }

    private void step(PlacedStep step, ObjectNode node) {
        node.put("step", step.stepId());
        node.put("start", step.start());
        node.put("end", step.end());
        node.put("startAt", calendar.show(step.start()));
        node.put("endAt", calendar.show(step.end()));
        list(node, "work", step.work(), (work, inner) -> {
            inner.put("person", work.personId());
            list(inner, "spans", work.spans(), (when, spanNode) -> span(spanNode, when));
        });
        list(node, "units", step.units(), (use, inner) -> {
            inner.put("pool", use.poolId()).put("unit", use.unit() + 1);
            span(inner, new Span(use.from(), use.until()));
        });
        node.put("surface", step.surfaceId());
        node.put("cavity", step.cavityId());
    }

    private void ovenRun(OvenRun run, ObjectNode node) {
        node.put("cavity", run.cavityId());
        node.put("temperature", run.temperatureC());
        node.put("from", run.from());
        node.put("ready", run.readyAt());
        node.put("until", run.until());
        node.put("fromAt", calendar.show(run.from()));
        node.put("readyAt", calendar.show(run.readyAt()));
        node.put("untilAt", calendar.show(run.until()));
    }

    private void span(ObjectNode node, Span when) {
        node.put("from", when.start());
        node.put("until", when.end());
        node.put("fromAt", calendar.show(when.start()));
        node.put("untilAt", calendar.show(when.end()));
    }

    private static <T> void list(ObjectNode node, String key, List<T> items, BiConsumer<T, ObjectNode> write) {
        ArrayNode array = node.putArray(key);
        items.forEach(item -> write.accept(item, array.addObject()));
    }

    private static void strings(ObjectNode node, String key, List<String> items) {
        ArrayNode array = node.putArray(key);
        items.forEach(array::add);
    }
}
