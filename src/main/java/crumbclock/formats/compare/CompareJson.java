package crumbclock.formats.compare;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Measure;
import crumbclock.domain.compare.Row;
import crumbclock.formats.json.JsonText;
import java.util.Locale;

/** The table as JSON: what is compared, then a row for each figure with a value for each plan. */
public final class CompareJson {

    private CompareJson() {
    }

    /** Equal comparisons give equal text. */
    public static String write(Comparison comparison) {
        var root = JsonNodeFactory.instance.objectNode();
        root.put("problem", comparison.base().problem().title());
        root.put("seeds", comparison.seeds());
        var plans = root.putArray("plans");
        comparison.plans().forEach(one -> plans.addObject().put("name", one.name()).put("title", one.title())
                .put("sound", one.plan().isSound()).put("seed", one.plan().search().seed())
                .put("schedules", one.plan().search().schedules()));
        var left = root.putArray("notPlanned");
        comparison.left().forEach(left::add);
        var rows = root.putArray("rows");
        comparison.rows().forEach(row -> row(rows.addObject(), row, comparison));
        return JsonText.write(root);
    }

    private static void row(ObjectNode node, Row row, Comparison comparison) {
        node.put("id", row.id()).put("label", row.label()).put("measure", row.measure().name().toLowerCase(Locale.ROOT))
                .put("better", row.less() ? "less" : "more").put("chance", row.spread());
        var cells = node.putArray("values");
        for (int i = 0; i < row.cells().size(); i++) {
            Cell cell = row.cells().get(i);
            var value = cells.addObject().put("plan", comparison.plans().get(i).name());
            cell.value().ifPresent(number -> value.put("value", number));
            if (row.measure() == Measure.MOMENT) {
                cell.value().ifPresent(minute -> value.put("time",
                        comparison.base().problem().clock().at((int) minute).toOffsetDateTime().toString()));
            }
            if (!cell.note().isEmpty()) {
                value.put("note", cell.note());
            }
            if (!cell.mark().word().isEmpty()) {
                value.put("mark", cell.mark().word());
            }
            if (cell.withinChance()) {
                value.put("withinChance", true);
            }
        }
    }
}
