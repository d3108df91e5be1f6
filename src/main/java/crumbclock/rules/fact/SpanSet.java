package crumbclock.rules.fact;

import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Minutes as a set: spans that are sorted, disjoint and do not even touch, so that work over two adjacent shifts
 * lies inside one of them.
 */
public record SpanSet(List<Span> spans) {

    public SpanSet {
        spans = List.copyOf(spans);
    }

    /** Joins spans that overlap or touch; empty ones vanish. */
    public static SpanSet of(Collection<Span> parts) {
        List<Span> joined = new ArrayList<>();
        for (Span part : parts.stream().filter(span -> !span.isEmpty()).sorted().toList()) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && part.start() <= last.end()) {
                joined.set(joined.size() - 1, new Span(last.start(), Math.max(last.end(), part.end())));
            } else {
                joined.add(part);
            }
        }
        return new SpanSet(joined);
    }

    /** What is left of this set without the minutes of the other. */
    public SpanSet minus(SpanSet other) {
        return new SpanSet(spans.stream().flatMap(span -> other.gapsIn(span).stream()).toList());
    }

    /** Whether every minute of the span is in the set; an empty span always is. */
    public boolean covers(Span span) {
        return gapsIn(span).isEmpty();
    }

    /** The parts of the span that are not in the set, in order. */
    public List<Span> gapsIn(Span span) {
        List<Span> gaps = new ArrayList<>();
        int from = span.start();
        for (int i = firstEndingAfter(from); i < spans.size() && spans.get(i).start() < span.end(); i++) {
            if (from < spans.get(i).start()) {
                gaps.add(new Span(from, spans.get(i).start()));
            }
            from = spans.get(i).end();
        }
        if (from < span.end()) {
            gaps.add(new Span(from, span.end()));
        }
        return gaps;
    }

    private int firstEndingAfter(int minute) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (spans.get(middle).end() > minute) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
