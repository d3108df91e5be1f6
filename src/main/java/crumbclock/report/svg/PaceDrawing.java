package crumbclock.report.svg;

import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.SeenStep;
import crumbclock.domain.pace.Spread;
import crumbclock.report.view.PaceWords;
import java.util.ArrayList;
import java.util.List;

/**
 * One person's paces to scale, a line for each kind of work: a ring for each step that was seen, a bar for the middle half, a full
 * square on its corner below the line for the middle, a long stroke for the figure in use. Shapes and words tell them apart, no colour.
 */
public final class PaceDrawing {

    private static final double WIDTH = 460;
    private static final double LEFT = 92;
    private static final double RIGHT = 36;
    private static final double ROW = 84;
    private static final double LINE = 44;
    private static final double TOP = 20;
    private static final double RING = 4;
    private static final double LEAST_MOST = 2;

    private final List<PaceRow> rows;
    private final double most;

    private PaceDrawing(List<PaceRow> rows) {
        this.rows = rows;
        double wide = LEAST_MOST;
        for (PaceRow row : rows) {
            wide = Math.max(wide, Math.max(row.inUse(), row.seen().orElseThrow().upper()) * 1.5);
        }
        this.most = Math.ceil(wide * 2) / 2;
    }

    /** @param rows of one person, at least one, each with steps that were seen */
    public static String draw(List<PaceRow> rows) {
        return new PaceDrawing(rows).draw();
    }

    private String draw() {
        double height = TOP + rows.size() * ROW + 22;
        var svg = new Svg("100%", "auto", "0 0 " + Svg.number(WIDTH) + " " + Svg.number(height), "pace-drawing",
                "Paces of " + rows.get(0).personName() + ", to scale; the table below holds the same figures");
        double step = most > 4 ? 1 : 0.5;
        for (double tick = 0; tick <= most; tick += step) {
            svg.leaf("line", "x1", x(tick), "y1", TOP, "x2", x(tick), "y2", height - 20, "class", tick == 1 ? "hour" : "quarter");
            svg.textMiddle(x(tick), height - 5, "quiet", Svg.number(tick));
        }
        for (int i = 0; i < rows.size(); i++) {
            row(svg, rows.get(i), TOP + i * ROW + LINE);
        }
        return svg.end();
    }

    private double x(double pace) {
        return LEFT + pace / most * (WIDTH - LEFT - RIGHT);
    }

    private void row(Svg svg, PaceRow row, double y) {
        Spread seen = row.seen().orElseThrow();
        svg.text(0, y + 4, "strong", row.workKind());
        svg.leaf("line", "x1", LEFT, "y1", y, "x2", WIDTH - RIGHT, "y2", y, "class", "lane-line");
        svg.leaf("rect", "x", x(seen.lower()), "y", y - 6, "width", Math.max(1, x(Math.min(most, seen.upper())) - x(seen.lower())), "height", 12.0,
                "class", "half");
        rings(svg, row.steps(), y);
        svg.leaf("line", "x1", x(row.inUse()), "y1", y - 24, "x2", x(row.inUse()), "y2", y + 7, "class", "in-use");
        label(svg, x(row.inUse()), y - 28, "in use " + PaceWords.number(row.inUse()));
        double middle = x(Math.min(most, seen.median()));
        svg.leaf("path", "d", "M" + Svg.number(middle) + " " + Svg.number(y + 4) + "l7 7l-7 7l-7 -7z", "class", "middle");
        label(svg, middle, y + 31, "seen " + PaceWords.number(seen.median()) + (seen.seen() < PaceRow.LEAST_SEEN ? ", too few to say" : ""));
    }

    private static void label(Svg svg, double x, double y, String text) {
        svg.textMiddle(Math.min(x, WIDTH - RIGHT - 20), y, "mark", text);
    }

    /** Rings that would cover each other stand on each other; what lies beyond the scale is an arrow at its end, with its figure. */
    private void rings(Svg svg, List<SeenStep> steps, double y) {
        List<Double> paces = steps.stream().map(SeenStep::pace).sorted().toList();
        List<Double> beyond = new ArrayList<>();
        double last = -1;
        int level = 0;
        for (double pace : paces) {
            if (pace > most) {
                beyond.add(pace);
                continue;
            }
            level = last >= 0 && x(pace) - last < RING * 2 ? (level + 1) % 4 : 0;
            last = level == 0 ? x(pace) : last;
            svg.leaf("circle", "cx", x(pace), "cy", y - level * 5.5, "r", RING, "class", "ring");
        }
        if (!beyond.isEmpty()) {
            svg.leaf("path", "d", "M" + Svg.number(WIDTH - RIGHT + 2) + " " + Svg.number(y - 5) + "l9 5l-9 5z", "class", "middle");
            svg.text(WIDTH - RIGHT + 13, y + 4, "mark", beyond.size() == 1 ? PaceWords.number(beyond.get(0)) : beyond.size() + "×");
        }
    }
}
