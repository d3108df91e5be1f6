package crumbclock.domain.plan;

import crumbclock.units.Span;
import java.util.List;

/**
 * One broken rule: what, where, when, in words.
 *
 * @param items   ids of the steps, cakes or orders concerned
 * @param place   store and shelf, cavity, person or pool; empty when none
 * @param when    the minutes in which it is broken
 * @param message one sentence with what was found and what is allowed
 */
public record Finding(Rule rule, List<String> items, String place, Span when, String message) {

    public Finding {
        items = List.copyOf(items);
    }
}
