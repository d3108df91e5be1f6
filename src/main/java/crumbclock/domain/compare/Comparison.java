package crumbclock.domain.compare;

import java.util.List;

/**
 * All plans and their table.
 *
 * @param plans    the base first, then each change in the order asked for
 * @param seeds    with how many seeds the base was planned to measure chance; 1 for not measured
 * @param left     titles of what was not planned because the search was ended early
 */
public record Comparison(List<Planned> plans, List<Row> rows, int seeds, List<String> left) {

    public Comparison {
        plans = List.copyOf(plans);
        rows = List.copyOf(rows);
        left = List.copyOf(left);
    }

    public Planned base() {
        return plans.get(0);
    }
}
