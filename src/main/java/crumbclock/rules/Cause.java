package crumbclock.rules;

import ai.timefold.solver.core.api.score.stream.ConstraintJustification;
import crumbclock.units.Span;
import java.util.List;

/**
 * Why a constraint matched.
 *
 * @param items   ids of the steps, cakes or orders concerned
 * @param place   store and shelf, cavity, person or pool; empty when none
 * @param when    the minutes concerned
 * @param message one sentence with what was found and what is allowed
 */
public record Cause(List<String> items, String place, Span when, String message) implements ConstraintJustification {

    public Cause {
        items = List.copyOf(items);
    }

    static Cause of(String place, Span when, String message, String... items) {
        return new Cause(List.of(items), place, when, message);
    }

    /** The minutes that two spans share, or the moment at which the later one starts when they share none. */
    static Span shared(Span one, Span other) {
        int start = Math.max(one.start(), other.start());
        return new Span(start, Math.max(start, Math.min(one.end(), other.end())));
    }

    /** What lies between two minutes, whichever comes first. */
    static Span between(int one, int other) {
        return new Span(Math.min(one, other), Math.max(one, other));
    }
}
