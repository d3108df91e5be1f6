package crumbclock.report.html;

import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Plan;
import java.util.List;
import java.util.Map;

/** One line of what the plan cost, with a sentence on what it means. */
public record CostRow(String name, String title, String weight, long points, int matches, String meaning) {

    private static final Map<String, String> MEANINGS = Map.of(
            "lateness", "Minutes after the agreed time, times the order's importance, and something for each order"
                    + " that is late at all or not made. Weighed before everything else.",
            "W01", "Minutes by which an order is ready later than its wished buffer before the hand-over.",
            "W02", "Minutes by which a cake is baked or finished earlier than its freshness wish.",
            "W03", "Minutes from first to last work of each person's day, work at odd hours, and unlike loads.",
            "W04", "Changes to another kind of work or another cake, and finishes that more than one person shares.",
            "W05", "Times an oven is heated, and minutes it is on.",
            "W06", "Things put in or taken out behind something that stands in front of them.",
            "W07", "Minutes until the last step of all is done.",
            "W08", "Steps that are moved away from the plan people already have; the sooner due, the dearer.");

    static List<CostRow> of(Plan plan) {
        return plan.cost().stream().map(CostRow::row).toList();
    }

    private static CostRow row(CostLine line) {
        return new CostRow(line.name(), line.title(), line.medium() ? "first" : "then", line.points(), line.matches(),
                MEANINGS.getOrDefault(line.name(), ""));
    }
}
