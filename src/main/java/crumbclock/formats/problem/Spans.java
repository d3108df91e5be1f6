package crumbclock.formats.problem;

import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/** Sorted, disjoint stretches of time with one more, or with one taken out. */
final class Spans {

    private Spans() {
    }

    static List<Span> plus(List<Span> sorted, Span more) {
        List<Span> all = new ArrayList<>(sorted);
        if (!more.isEmpty()) {
            all.add(more);
        }
        all.sort(null);
        List<Span> joined = new ArrayList<>();
        for (Span span : all) {
            int last = joined.size() - 1;
            if (last >= 0 && span.start() <= joined.get(last).end()) {
                joined.set(last, new Span(joined.get(last).start(), Math.max(span.end(), joined.get(last).end())));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    static List<Span> less(List<Span> sorted, Span gone) {
        List<Span> left = new ArrayList<>();
        for (Span span : sorted) {
            if (!span.overlaps(gone)) {
                left.add(span);
                continue;
            }
            if (span.start() < gone.start()) {
                left.add(new Span(span.start(), gone.start()));
            }
            if (gone.end() < span.end()) {
                left.add(new Span(gone.end(), span.end()));
            }
        }
        return left;
    }
}
