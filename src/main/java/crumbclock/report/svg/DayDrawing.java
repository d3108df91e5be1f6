package crumbclock.report.svg;

import crumbclock.report.view.ClockText;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The timetable of one stretch of a day as lanes with a common clock. */
public final class DayDrawing {

    private static final double GUTTER = 128;
    private static final double PLOT = 960;
    private static final double HEAD = 26;
    /** A person's row has a strip above it for the names of things taken out, one below for those put in. */
    private static final double PERSON_ROW = 54;
    private static final double STRIP = 11;
    private static final double ROW = 17;
    private static final double FONT = 11;
    private static final double SMALL = 9.5;
    private static final int MOST_QUARTERS = 9 * 60;

    private final ClockText clock;
    private final Span window;
    private final double scale;

    private DayDrawing(ClockText clock, Span window) {
        this.clock = clock;
        this.window = window;
        this.scale = PLOT / window.minutes();
    }

    /**
     * One part of a day.
     *
     * @param times what it covers, in words
     */
    public record Panel(String times, String svg) {
    }

    /** The drawings of one calendar day in order; none for a day without work. */
    public static List<Panel> draw(PlanView view, Span day) {
        List<Panel> panels = new ArrayList<>();
        var lanes = Lanes.of(view);
        for (Span window : Panels.of(view, day)) {
            var drawing = new DayDrawing(view.clock(), window);
            panels.add(new Panel(view.clock().time(window.start()) + " to " + view.clock().time(window.end()),
                    drawing.draw(lanes)));
        }
        return panels;
    }

    private String draw(List<Lane> all) {
        var lanes = all.stream().map(lane -> lane.within(window)).map(Lane::readable)
                .filter(lane -> lane.group().equals("people") || !lane.bars().isEmpty()).toList();
        double height = HEAD + 8;
        String group = "";
        for (Lane lane : lanes) {
            height += laneHeight(lane) + (lane.group().equals(group) ? 0 : 16);
            group = lane.group();
        }
        var svg = new Svg(Svg.number(GUTTER + PLOT + 6), Svg.number(height), "0 0 " + Svg.number(GUTTER + PLOT + 6)
                + " " + Svg.number(height), "day-drawing", "Timetable " + clock.day(window.start()) + " "
                + clock.span(window));
        ruler(svg, height);
        double y = HEAD;
        group = "";
        for (Lane lane : lanes) {
            if (!lane.group().equals(group)) {
                group = lane.group();
                svg.open("g", "font-size", SMALL).text(2, y + 12, "group", group).close("g");
                y += 16;
            }
            lane(svg, lane, y);
            y += laneHeight(lane);
        }
        return svg.end();
    }

    private static double rowHeight(Lane lane) {
        return lane.group().equals("people") ? PERSON_ROW : ROW;
    }

    private static double laneHeight(Lane lane) {
        return lane.rowCount() * rowHeight(lane) + 6;
    }

    private double x(int minute) {
        return GUTTER + Math.max(0, Math.min(window.minutes(), minute - window.start())) * scale;
    }

    private void ruler(Svg svg, double height) {
        svg.open("g", "font-size", FONT, "text-anchor", "middle");
        for (int minute = window.start(); minute <= window.end(); minute += 15) {
            boolean hour = (minute - window.start()) % 60 == 0;
            if (hour || window.minutes() <= MOST_QUARTERS) {
                svg.leaf("line", "x1", x(minute), "y1", hour ? HEAD - 8 : HEAD, "x2", x(minute), "y2", height - 2,
                        "class", hour ? "hour" : "quarter");
            }
            if (hour) {
                double nudge = minute == window.end() ? -12 : 0;
                svg.text(x(minute) + nudge, HEAD - 12, "clock", clock.time(minute));
            }
        }
        svg.close("g");
    }

    private void lane(Svg svg, Lane lane, double top) {
        double height = laneHeight(lane);
        svg.leaf("line", "x1", 0.0, "y1", top, "x2", GUTTER + PLOT, "y2", top, "class", "lane-line");
        svg.open("g", "font-size", FONT);
        double line = top + 14;
        for (String part : Fit.lines(lane.name(), FONT * 1.1, GUTTER - 6, height > 2.5 * FONT ? 2 : 1)) {
            svg.text(2, line, "lane-name", part);
            line += FONT + 2;
        }
        svg.close("g");
        for (Lane.Shade shade : lane.shades()) {
            double from = x(shade.when().start());
            double width = x(shade.when().end()) - from;
            svg.open("g").title(shade.text()).leaf("rect", "x", from, "y", top + 1, "width", width, "height",
                    height - 2, "fill", "url(#p-" + shade.cssClass() + ")");
            String text = Fit.shorten(shade.text(), SMALL, width - 6);
            if (text.equals(shade.text())) {
                svg.leaf("rect", "x", from + 2, "y", top + height / 2 - 6, "width", Fit.width(text, SMALL) + 4, "height",
                        12.0, "class", "paper");
                svg.open("g", "font-size", SMALL).text(from + 4, top + height / 2 + 3, "quiet", text).close("g");
            }
            svg.close("g");
        }
        boolean person = lane.group().equals("people");
        double strip = person ? STRIP : 0;
        var rows = lane.rows();
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < rows.size(); i++) {
                var bar = lane.bars().get(i);
                if (bar.isTouch() == (pass == 1)) {
                    bar(svg, bar, top + 3 + rows.get(i) * rowHeight(lane) + strip, rowHeight(lane) - 2 - 2 * strip);
                }
            }
        }
        if (person) {
            touchNames(svg, lane, Lane.Look.TAKE_OUT, top + 3 + STRIP - 2.5);
            touchNames(svg, lane, Lane.Look.PUT_IN, top + PERSON_ROW + 1 - STRIP + 9);
        }
    }

    /** Names of touches in a strip; one with no room beside the name before it is counted there: "A1 +2". */
    private void touchNames(Svg svg, Lane lane, Lane.Look look, double y) {
        var touches = lane.bars().stream().filter(bar -> bar.look() == look).toList();
        svg.open("g", "font-size", SMALL);
        int next = 0;
        while (next < touches.size()) {
            String name = touches.get(next).label();
            double middle = (x(touches.get(next).when().start()) + x(touches.get(next).when().end())) / 2;
            double from = middle - Fit.width(name, SMALL) * 0.55;
            int more = 0;
            String text = name;
            while (++next < touches.size()
                    && x(touches.get(next).when().start()) < from + Fit.width(text, SMALL) * 1.1 + 8) {
                more++;
                text = name + " +" + more;
            }
            svg.text(from, y, "strong", text);
        }
        svg.close("g");
    }

    private void bar(Svg svg, Lane.Bar bar, double top, double height) {
        double from = x(bar.when().start());
        double width = Math.max(x(bar.when().end()) - from, 3);
        svg.open("g", "class", "bar " + bar.look().name().toLowerCase(Locale.ROOT).replace('_', '-') + " "
                + bar.tint()).title((bar.label() + " " + bar.text()).strip() + ", " + clock.daySpan(bar.when()));
        if (bar.isTouch()) {
            touch(svg, bar, from, width, top, height);
        } else {
            svg.leaf("rect", "x", from, "y", top, "width", width, "height", height, "rx", 2.0);
            label(svg, bar, from, width, top, height);
        }
        svg.close("g");
    }

    /** A narrow upright bar with an arrow: down for putting in, up for taking out. */
    private void touch(Svg svg, Lane.Bar bar, double from, double width, double top, double height) {
        double middle = from + width / 2;
        svg.leaf("rect", "x", from, "y", top, "width", width, "height", height);
        boolean in = bar.look() == Lane.Look.PUT_IN;
        double tip = in ? top + height : top;
        double base = in ? tip - 7 : tip + 7;
        svg.leaf("path", "d", "M" + Svg.number(middle) + " " + Svg.number(tip) + "L" + Svg.number(middle - 4.5) + " "
                + Svg.number(base) + "L" + Svg.number(middle + 4.5) + " " + Svg.number(base) + "Z");
    }

    private void label(Svg svg, Lane.Bar bar, double from, double width, double top, double height) {
        String before = bar.when().start() < window.start() ? "‹ " : "";
        String after = bar.when().end() > window.end() ? " ›" : "";
        String away = bar.look() == Lane.Look.AWAY ? "away: " : "";
        String strong = before + bar.label();
        if (height > 2 * FONT) {
            if (width < Fit.width(bar.label(), FONT) + 4) {
                if (width >= FONT) {
                    svg.open("g", "font-size", FONT).textUp(from + width / 2 + FONT * 0.36, top + height / 2,
                            "strong", Fit.shorten(bar.label(), FONT, height)).close("g");
                }
                return;
            }
            svg.open("g", "font-size", FONT).text(from + 3, top + FONT + 1, "strong",
                    Fit.shorten(strong, FONT, width - 3)).close("g");
            svg.open("g", "font-size", SMALL).text(from + 3, top + FONT + SMALL + 4, "plain",
                    Fit.shorten(away + bar.text() + after, SMALL, width - 4)).close("g");
            return;
        }
        double room = width - 6;
        String label = Fit.shorten(strong, FONT, room);
        svg.open("g", "font-size", FONT).text(from + 3, top + height - 4, "strong", label).close("g");
        double used = Fit.width(label, FONT) * 1.15 + 5;
        String rest = Fit.shorten(bar.text() + after, SMALL, room - used);
        if (!rest.isBlank() && label.equals(strong)) {
            svg.open("g", "font-size", SMALL).text(from + 3 + used, top + height - 4, "plain", rest.strip())
                    .close("g");
        }
    }
}
