package crumbclock.formats.kitchen;

import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.KitchenFile.AwayEntry;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Times of a kitchen file to minutes, with an issue for each that is none. */
public record CalendarReader(ProblemCalendar calendar, IssueLog log) {

    /** Shifts, breaks, opening hours: sorted and disjoint; overlapping ones are an issue. */
    List<Span> weekly(Spot spot, Map<String, List<String>> texts) {
        Map<String, List<ClockText.DayRange>> ranges = new TreeMap<>();
        for (var entry : texts.entrySet()) {
            var at = spot.child(entry.getKey());
            if (Character.isDigit(entry.getKey().charAt(0)) && ClockText.date(entry.getKey()).isEmpty()) {
                at.fault(log, Spot.quote(entry.getKey()), "a date that exists, such as 2026-06-05", "");
            }
            ranges.put(entry.getKey(), ranges(at, entry.getValue()));
        }
        return disjoint(spot, calendar.spans(ranges));
    }

    private List<ClockText.DayRange> ranges(Spot spot, List<String> texts) {
        List<ClockText.DayRange> ranges = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            var at = spot.node().isArray() ? spot.child(i) : spot;
            ClockText.range(texts.get(i)).ifPresentOrElse(ranges::add,
                    () -> at.fault(log, ClockText.RANGE_EXPECTED, ""));
        }
        return ranges;
    }

    /** Stretches when something is away, inside the problem: sorted and disjoint. */
    List<Span> away(Spot spot, List<AwayEntry> entries) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            var inside = open(spot.child(i), entries.get(i).from(), entries.get(i).until());
            if (!inside.isEmpty()) {
                spans.add(inside);
            }
        }
        spans.sort(null);
        return disjoint(spot, spans);
    }

    /** A stretch whose ends may be open, cut to the problem; empty when none of it lies there. */
    public Span open(Spot spot, String from, String until) {
        int start = from == null ? 0 : moment(spot.child("from"), from).orElse(0);
        int end = until == null ? calendar.clock().horizonMinutes()
                : moment(spot.child("until"), until).orElse(calendar.clock().horizonMinutes());
        boolean bothRead = from != null && until != null && !spot.child("from").isFaulty(log) && !spot.child("until").isFaulty(log);
        if (bothRead && calendar.trusted() && end <= start) {
            spot.child("until").fault(log, "a moment after \"from\", which is " + Spot.quote(from), "");
        }
        int cutStart = Math.max(0, start);
        int cutEnd = Math.min(calendar.clock().horizonMinutes(), end);
        return cutStart < cutEnd ? new Span(cutStart, cutEnd) : new Span(0, 0);
    }

    private OptionalInt moment(Spot spot, String text) {
        var minute = calendar.minute(text);
        if (minute.isEmpty()) {
            spot.fault(log, ClockText.MOMENT_EXPECTED, "");
        }
        return minute;
    }

    private List<Span> disjoint(Spot spot, List<Span> sorted) {
        for (int i = 1; i < sorted.size(); i++) {
            var earlier = sorted.get(i - 1);
            var later = sorted.get(i);
            if (earlier.overlaps(later)) {
                spot.fault(log, show(earlier) + " and " + show(later), "times that do not overlap",
                        "Join them or move one of them.");
                return List.of();
            }
        }
        return List.copyOf(sorted);
    }

    private String show(Span span) {
        return calendar.show(span.start()) + " to " + calendar.show(span.end());
    }
}
