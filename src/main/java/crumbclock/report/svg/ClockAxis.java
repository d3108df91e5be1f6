package crumbclock.report.svg;

import crumbclock.report.view.ClockText;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/** A clock from left to right, to scale wherever something is done; idle hours are cut out and marked. */
final class ClockAxis {

    static final double PER_MINUTE = 1.5;

    private static final int LONGEST_IDLE = 120;
    private static final int ROUND = 30;
    private static final double CUT = 22;

    private final double left;
    private final List<Span> windows = new ArrayList<>();

    /** @param busy when something is done, in any order */
    ClockAxis(double left, List<Span> busy) {
        this.left = left;
        for (Span span : busy.stream().sorted().toList()) {
            int from = Math.floorDiv(span.start(), ROUND) * ROUND;
            int until = -Math.floorDiv(-span.end(), ROUND) * ROUND;
            int last = windows.size() - 1;
            if (last >= 0 && from - windows.get(last).end() <= LONGEST_IDLE) {
                windows.set(last, new Span(windows.get(last).start(), Math.max(until, windows.get(last).end())));
            } else {
                windows.add(new Span(from, until));
            }
        }
    }

    /** Place of a minute; one that lies in a cut has the cut's middle. */
    double x(int minute) {
        double x = left;
        for (Span window : windows) {
            if (minute < window.start()) {
                return x - CUT / 2;
            }
            if (minute <= window.end()) {
                return x + (minute - window.start()) * PER_MINUTE;
            }
            x += window.minutes() * PER_MINUTE + CUT;
        }
        return x - CUT / 2;
    }

    double width() {
        return windows.stream().mapToDouble(window -> window.minutes() * PER_MINUTE + CUT).sum() + left;
    }

    /** Hours as lines with their clock times, days where a stretch begins, cuts as broken lines. */
    void draw(Svg svg, ClockText clock, double top, double bottom) {
        for (Span window : windows) {
            svg.text(x(window.start()), top - 18, "strong", clock.day(window.start()));
            for (int minute = window.start(); minute <= window.end(); minute += ROUND) {
                boolean hour = clock.time(minute).endsWith(":00");
                svg.leaf("line", "x1", x(minute), "y1", hour ? top - 4 : top, "x2", x(minute), "y2", bottom,
                        "class", hour ? "hour" : "quarter");
                if (hour && minute < window.end() - ROUND / 2) {
                    svg.text(x(minute), top - 6, "clock", clock.time(minute));
                }
            }
            if (window != windows.get(windows.size() - 1)) {
                double middle = x(window.end()) + CUT / 2;
                svg.leaf("line", "x1", middle, "y1", top - 24, "x2", middle, "y2", bottom, "class", "cut");
            }
        }
    }
}
