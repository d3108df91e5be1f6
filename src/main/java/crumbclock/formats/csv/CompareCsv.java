package crumbclock.formats.csv;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table of a comparison for spreadsheets: one row for each figure of each plan, figure by figure. */
public final class CompareCsv {

    private static final List<String> HEADER = List.of("figure", "label", "measure", "better", "plan", "title", "value", "time", "note",
            "mark", "within_chance", "chance");

    private CompareCsv() {
    }

    /** @return RFC 4180 text with a header, ends of lines CR LF */
    public static String write(Comparison comparison) {
        var cells = new OutCells(comparison.base().problem());
        List<List<Object>> rows = new ArrayList<>();
        for (Row row : comparison.rows()) {
            for (int i = 0; i < row.cells().size(); i++) {
                Cell cell = row.cells().get(i);
                var plan = comparison.plans().get(i);
                String measure = row.measure().name().toLowerCase(Locale.ROOT);
                Object value = cell.value().isPresent() ? cell.value().getAsLong() : "";
                String time = measure.equals("moment") && cell.value().isPresent() ? cells.time((int) cell.value().getAsLong()) : "";
                rows.add(List.of(row.id(), row.label(), measure, row.less() ? "less" : "more", plan.name(), plan.title(), value, time,
                        cell.note(), cell.mark().word(), cell.withinChance() ? "yes" : "no", row.spread()));
            }
        }
        return OutCells.table(HEADER, rows);
    }
}
