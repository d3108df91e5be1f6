package crumbclock.units;

import java.util.ArrayList;
import java.util.List;

/** Stretches of time taken together. What comes out is without empty spans. */
public final class Spans {

    private Spans() {
    }

    /** Every minute that lies in one of them: sorted, disjoint, and those that touch are one. */
    public static List<Span> joined(List<Span> spans) {
        List<Span> joined = new ArrayList<>();
        for (Span span : spans.stream().filter(one -> !one.isEmpty()).sorted().toList()) {
            int last = joined.size() - 1;
            if (last >= 0 && span.start() <= joined.get(last).end()) {
                joined.set(last, new Span(joined.get(last).start(), Math.max(joined.get(last).end(), span.end())));
            } else {
                joined.add(span);
            }
        }
        return List.copyOf(joined);
    }

    /** The same with one more. */
    public static List<Span> plus(List<Span> spans, Span more) {
        List<Span> all = new ArrayList<>(spans);
        all.add(more);
        return joined(all);
    }

    /** What is left of each of them, in their order; they are not joined. */
    public static List<Span> minus(List<Span> spans, Span gone) {
        List<Span> left = new ArrayList<>();
        for (Span span : spans) {
            if (!span.overlaps(gone)) {
                add(left, span.start(), span.end());
                continue;
            }
            add(left, span.start(), gone.start());
            add(left, gone.end(), span.end());
        }
        return List.copyOf(left);
    }

    private static void add(List<Span> spans, int from, int until) {
        if (from < until) {
            spans.add(new Span(from, until));
        }
    }
}
