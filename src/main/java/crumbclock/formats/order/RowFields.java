package crumbclock.formats.order;

import crumbclock.formats.csv.CsvTable;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** One row of an orders table. */
record RowFields(String file, CsvTable.Row row, Map<Field, Integer> columnByField, IssueLog log) implements Fields {

    private static final Pattern LIST_BREAK = Pattern.compile("[\\s,;]+");
    private static final Pattern CHOICE_BREAK = Pattern.compile("[\\s,;]+(?=[^\\s,;=]+\\s*=)");

    @Override
    public String text(Field field) {
        var column = columnByField.get(field);
        return column == null ? "" : row.cells().get(column).strip();
    }

    @Override
    public List<String> list(Field field) {
        return Arrays.stream(LIST_BREAK.split(text(field))).filter(word -> !word.isEmpty()).toList();
    }

    @Override
    public Map<String, String> choices(Field field) {
        Map<String, String> choices = new TreeMap<>();
        for (String choice : CHOICE_BREAK.split(text(field))) {
            int equal = choice.indexOf('=');
            String name = choice.substring(0, Math.max(0, equal)).strip();
            String value = choice.substring(equal + 1).strip();
            if (choice.isBlank()) {
                continue;
            }
            if (name.isEmpty() || value.isEmpty() || value.contains("=")) {
                fault(field, "names with their choices such as finish=marbled colours=3", "");
            } else if (choices.putIfAbsent(name, value) != null) {
                fault(field, "each name once", "\"" + name + "\" stands here twice.");
            }
        }
        return choices;
    }

    @Override
    public void fault(Field field, String expected, String advice) {
        fault(field, text(field).isEmpty() ? "nothing" : Spot.quote(text(field)), expected, advice);
    }

    @Override
    public void fault(Field field, String read, String expected, String advice) {
        log.add(new Issue(file, row.line(), "column " + field.column(), read, expected, advice));
    }
}
