package crumbclock.formats.csv;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import java.util.ArrayList;
import java.util.List;

/** The index of a history folder: one line for each plan, in the order in which they were made. */
public final class HistoryCsv {

    private static final List<String> HEADER = List.of("number", "time", "reason", "folder");

    private HistoryCsv() {
    }

    /**
     * One plan of the history.
     *
     * @param number from 1
     * @param time   when it was made, as it was given; empty for the first plan of all
     * @param folder beside the index, with the plan.json in it
     */
    public record Entry(int number, String time, String reason, String folder) {
    }

    /** @return RFC 4180 text with a header, ends of lines CR LF */
    public static String write(List<Entry> entries) {
        List<List<Object>> rows = new ArrayList<>();
        entries.forEach(entry -> rows.add(List.of(entry.number(), entry.time(), entry.reason(), entry.folder())));
        return OutCells.table(HEADER, rows);
    }

    /** The entries of an index as {@link #write} made it; lines that are none are left out. */
    public static List<Entry> read(SourceFile source, IssueLog log) {
        List<Entry> entries = new ArrayList<>();
        CsvTable.read(source, log).ifPresent(table -> table.rows().stream()
                .filter(row -> row.cells().size() == HEADER.size() && row.cells().get(0).matches("[0-9]{1,6}"))
                .forEach(row -> entries.add(new Entry(Integer.parseInt(row.cells().get(0)), row.cells().get(1), row.cells().get(2),
                        row.cells().get(3)))));
        return entries;
    }
}
