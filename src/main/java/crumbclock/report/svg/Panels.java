package crumbclock.report.svg;

import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.report.view.PlanView;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which stretches of a day are drawn: those in which somebody works or an oven is on, widened to full hours. Gaps of
 * two hours and more, above all the nights, are left out; a stretch of more than eight hours is drawn in parts.
 */
final class Panels {

    private static final int GAP = 120;
    private static final int MOST = 8 * 60;

    private Panels() {
    }

    /** Windows of one calendar day, in order; empty for a day without work. */
    static List<Span> of(PlanView view, Span day) {
        List<Span> windows = new ArrayList<>();
        int from = 0;
        int until = Integer.MIN_VALUE;
        for (Span span : activity(view)) {
            if (!span.overlaps(day)) {
                continue;
            }
            int start = Math.max(day.start(), floorHour(Math.max(day.start(), span.start()), day));
            int end = Math.min(day.end(), ceilHour(Math.min(day.end(), span.end()), day));
            if (until != Integer.MIN_VALUE && start - until >= GAP) {
                split(windows, new Span(from, until), day);
                until = Integer.MIN_VALUE;
            }
            if (until == Integer.MIN_VALUE) {
                from = start;
            }
            until = Math.max(until, end);
        }
        if (until != Integer.MIN_VALUE) {
            split(windows, new Span(from, until), day);
        }
        return windows;
    }

    private static void split(List<Span> windows, Span window, Span day) {
        int parts = (window.minutes() + MOST - 1) / MOST;
        int from = window.start();
        for (int part = 1; part <= parts; part++) {
            int end = part == parts ? window.end()
                    : ceilHour(window.start() + window.minutes() * part / parts, day);
            windows.add(new Span(from, end));
            from = end;
        }
    }

    private static int floorHour(int minute, Span day) {
        return day.start() + Math.floorDiv(minute - day.start(), 60) * 60;
    }

    private static int ceilHour(int minute, Span day) {
        return day.start() + Math.floorDiv(minute - day.start() + 59, 60) * 60;
    }

    private static List<Span> activity(PlanView view) {
        var timetable = view.plan().timetable();
        var work = timetable.steps().stream().flatMap(step -> step.work().stream())
                .flatMap(one -> one.spans().stream());
        var touches = timetable.touches().stream().map(PlacedTouch::when);
        var runs = timetable.ovenRuns().stream().map((OvenRun run) -> new Span(run.from(), run.until()));
        return Stream.of(work, touches, runs).flatMap(stream -> stream).filter(span -> !span.isEmpty())
                .sorted(Comparator.naturalOrder()).toList();
    }
}
