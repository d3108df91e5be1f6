package crumbclock.domain.plan;

import crumbclock.units.Span;
import java.util.List;

/** When one person works on a hands-on step: one span, or several when it was put down; sorted, disjoint. */
public record PersonWork(String personId, List<Span> spans) {

    public PersonWork {
        spans = List.copyOf(spans);
    }
}
