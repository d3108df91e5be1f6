package crumbclock.report.svg;

import crumbclock.domain.compare.Move;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.report.view.ClockText;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Two timetables over each other, to one scale: for each person and oven the first plan's row above the second's, and a line
 * from where a moved step was to where it is. Each plan is drawn once for the whole page, however many pairs show it.
 */
public final class PairDrawing {

    private static final double GUTTER = 112;
    private static final double HEAD = 44;
    private static final double ROW = 20;
    private static final double BETWEEN = 18;
    private static final double LANE = 2 * ROW + BETWEEN + 10;
    private static final double FONT = 10;
    private static final int MOST_ROWS = 4;

    private final List<Planned> plans;
    private final ClockText clock;
    private final Map<String, String> lanes = new LinkedHashMap<>();
    private final ClockAxis axis;

    /** Where a step's first bar is drawn. */
    private record Bar(double from, double until, double top) {

        double middle() {
            return (from + until) / 2;
        }
    }

    private final List<Map<String, Bar>> barsByStep = new ArrayList<>();
    private final String shared;

    /** @param plans all that any pair may show, of problems with one clock */
    public PairDrawing(List<Planned> plans) {
        this.plans = List.copyOf(plans);
        this.clock = new ClockText(plans.get(0).problem().clock());
        List<Span> busy = new ArrayList<>();
        for (Planned planned : plans) {
            for (Person person : planned.problem().kitchen().people()) {
                lanes.putIfAbsent("person " + person.id(), person.name());
            }
            planned.plan().timetable().steps().stream().filter(step -> !step.cavityId().isEmpty()).map(PlacedStep::span).forEach(busy::add);
            planned.plan().timetable().steps().forEach(step -> step.work().forEach(work -> busy.addAll(work.spans())));
            planned.plan().timetable().touches().forEach(touch -> busy.add(touch.when()));
        }
        for (Planned planned : plans) {
            for (Cavity cavity : planned.problem().kitchen().cavities()) {
                lanes.putIfAbsent("oven " + cavity.id(), cavity.name());
            }
        }
        this.axis = new ClockAxis(GUTTER, busy);
        this.shared = drawAll();
    }

    /** What all pairs refer to; stands once in the page, and shows nothing by itself. */
    public String shared() {
        return shared;
    }

    private double laneTop(String lane) {
        return HEAD + new ArrayList<>(lanes.keySet()).indexOf(lane) * LANE + 4;
    }

    private double height() {
        return HEAD + lanes.size() * LANE + 6;
    }

    private String drawAll() {
        var svg = new Svg("0", "0", "0 0 1 1", "defs", "parts of the drawings below");
        svg.open("defs").open("g", "id", "pair-clock", "font-size", FONT);
        axis.draw(svg, clock, HEAD, height());
        for (var lane : lanes.entrySet()) {
            double top = laneTop(lane.getKey());
            svg.leaf("line", "x1", 0.0, "y1", top - 4, "x2", axis.width(), "y2", top - 4, "class", "lane-line");
            double line = top + ROW;
            for (String part : Fit.lines(lane.getValue(), FONT * 1.1, GUTTER - 30, 3)) {
                svg.text(2, line, "lane-name", part);
                line += FONT + 2;
            }
        }
        svg.close("g");
        for (int i = 0; i < plans.size(); i++) {
            barsByStep.add(new HashMap<>());
            plan(svg, i);
        }
        return svg.close("defs").end();
    }

    private void plan(Svg svg, int index) {
        var planned = plans.get(index);
        var view = new PlanView(planned.problem(), planned.plan());
        svg.open("g", "id", "pair-plan-" + index, "font-size", FONT);
        for (PlacedTouch touch : planned.plan().timetable().touches()) {
            bar(svg, view, "person " + touch.personId(), touch.when(), "touch", touch.stepId(), index, 0, 1);
        }
        for (PlacedStep step : planned.plan().timetable().steps()) {
            step.work().forEach(work -> work.spans().forEach(span ->
                    bar(svg, view, "person " + work.personId(), span, "work", step.stepId(), index, 0, 1)));
        }
        for (Cavity cavity : planned.problem().kitchen().cavities()) {
            bakes(svg, view, cavity, index);
        }
        svg.close("g");
    }

    private void bakes(Svg svg, PlanView view, Cavity cavity, int index) {
        var bakes = view.plan().timetable().steps().stream().filter(step -> step.cavityId().equals(cavity.id())).toList();
        List<Integer> rows = new ArrayList<>();
        List<Integer> freeFrom = new ArrayList<>();
        for (PlacedStep bake : bakes) {
            int row = 0;
            while (row < freeFrom.size() && freeFrom.get(row) > bake.start()) {
                row++;
            }
            if (row == freeFrom.size()) {
                freeFrom.add(0);
            }
            freeFrom.set(row, bake.end());
            rows.add(row);
        }
        if (freeFrom.size() > MOST_ROWS) {
            loads(svg, bakes, cavity, index);
            return;
        }
        for (int i = 0; i < bakes.size(); i++) {
            bar(svg, view, "oven " + cavity.id(), bakes.get(i).span(), "bake", bakes.get(i).stepId(), index, rows.get(i), freeFrom.size());
        }
    }

    /** Too many to be told apart: one bar for all that goes in at one moment, with how many there are. */
    private void loads(Svg svg, List<PlacedStep> bakes, Cavity cavity, int index) {
        Map<Integer, List<PlacedStep>> loads = new TreeMap<>();
        bakes.forEach(bake -> loads.computeIfAbsent(bake.start(), unseen -> new ArrayList<>()).add(bake));
        loads.forEach((start, load) -> {
            int end = load.stream().mapToInt(PlacedStep::end).max().orElseThrow();
            var bar = new Bar(axis.x(start), axis.x(end), laneTop("oven " + cavity.id()));
            load.forEach(bake -> barsByStep.get(index).putIfAbsent(bake.stepId(), bar));
            svg.open("g", "class", "bar bake tb").title(load.size() + " bakes, " + clock.daySpan(new Span(start, end)));
            svg.leaf("rect", "x", bar.from(), "y", bar.top(), "width", bar.until() - bar.from(), "height", ROW - 0.5);
            svg.text(bar.from() + 2, bar.top() + ROW / 2 + 4, "strong", load.size() + "×").close("g");
        });
    }

    private void bar(Svg svg, PlanView view, String lane, Span when, String kind, String stepId, int index, int row, int rows) {
        if (!lanes.containsKey(lane)) {
            return;
        }
        double high = ROW / rows;
        var bar = new Bar(axis.x(when.start()), Math.max(axis.x(when.end()), axis.x(when.start()) + 1.5), laneTop(lane));
        boolean touch = kind.equals("touch");
        if (!touch) {
            barsByStep.get(index).putIfAbsent(stepId, bar);
        }
        String label = view.ownerLabel(view.ownerId(stepId));
        int order = view.orderIndex(view.ownerId(stepId));
        svg.open("g", "class", "bar " + kind + " " + (order < 0 ? "tb" : "t" + order % 8));
        svg.title(label + " " + view.stepName(stepId) + ", " + clock.daySpan(when));
        svg.leaf("rect", "x", bar.from(), "y", bar.top() + row * high, "width", bar.until() - bar.from(), "height", high - 0.5);
        if (!touch && high > 9 && bar.until() - bar.from() > label.length() * FONT * 0.62 + 3) {
            svg.text(bar.from() + 2, bar.top() + row * high + Math.min(high - 3, ROW / 2 + 4), "strong", label);
        }
        svg.close("g");
    }

    /**
     * One pair.
     *
     * @param moves steps that both have at unlike times, from the first plan to the second
     */
    public String draw(int first, int second, List<Move> moves) {
        var svg = new Svg(Svg.number(axis.width()), Svg.number(height()), "0 0 " + Svg.number(axis.width()) + " " + Svg.number(height()),
                "pair-drawing", "Timetable of " + plans.get(first).title() + " over that of " + plans.get(second).title());
        svg.leaf("use", "href", "#pair-clock");
        svg.leaf("use", "href", "#pair-plan-" + first);
        svg.leaf("use", "href", "#pair-plan-" + second, "y", ROW + BETWEEN);
        svg.open("g", "font-size", FONT * 0.9, "text-anchor", "end");
        for (String lane : lanes.keySet()) {
            svg.text(GUTTER - 4, laneTop(lane) + ROW * 0.7, "quiet", label(first));
            svg.text(GUTTER - 4, laneTop(lane) + ROW + BETWEEN + ROW * 0.7, "quiet", label(second));
        }
        svg.close("g");
        for (Move move : moves) {
            var from = barsByStep.get(first).get(move.stepId());
            var to = barsByStep.get(second).get(move.stepId());
            if (from != null && to != null) {
                svg.leaf("line", "x1", from.middle(), "y1", from.top() + ROW, "x2", to.middle(), "y2", to.top() + ROW + BETWEEN,
                        "class", move.to() < move.from() ? "moved earlier" : "moved later");
            }
        }
        return svg.end();
    }

    /** Rows are told apart by the plan's number in the table. */
    private static String label(int index) {
        return index == 0 ? "base" : String.valueOf(index);
    }

    /** How many of the moves are drawn: the others are of steps that only stand somewhere. */
    public int drawn(int first, int second, List<Move> moves) {
        return (int) moves.stream().filter(move -> barsByStep.get(first).containsKey(move.stepId())
                && barsByStep.get(second).containsKey(move.stepId())).count();
    }
}
