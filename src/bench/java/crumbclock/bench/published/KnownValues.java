package crumbclock.bench.published;

import crumbclock.outside.PublishedFiles;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A list of published values that lies beside the instances: the first column names the instance. */
record KnownValues(List<String> columns, Map<String, String[]> rows) {

    static KnownValues read(Path csv) {
        List<String[]> lines = PublishedFiles.text(csv).lines().map(line -> line.strip().split(",", -1)).toList();
        Map<String, String[]> rows = new LinkedHashMap<>();
        lines.stream().skip(1).forEach(cells -> rows.put(cells[0], cells));
        return new KnownValues(Arrays.asList(lines.get(0)), rows);
    }

    String text(String instance, String column) {
        return rows.get(instance)[columns.indexOf(column)];
    }

    /** A whole number, or {@link Attempt#NONE} where the cell is empty. */
    int value(String instance, String column) {
        String text = text(instance, column);
        return text.isEmpty() ? Attempt.NONE : Integer.parseInt(text);
    }
}
