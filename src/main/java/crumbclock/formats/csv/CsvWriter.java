package crumbclock.formats.csv;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes tables after RFC 4180: commas, CR LF after every record, quotes where a field holds a comma, a quote or a line break.
 * Text that a spreadsheet would run as a formula gets an apostrophe in front, so that it stays text; {@link CsvTable} takes it off again.
 */
public final class CsvWriter {

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?");
    private static final String FORMULA_STARTS = "=+-@";

    private CsvWriter() {
    }

    /**
     * @param header names of the columns
     * @param rows   each with as many cells
     * @throws IllegalArgumentException when a row has another number of cells
     */
    public static String write(List<String> header, List<List<String>> rows) {
        var text = new StringBuilder();
        record(header, text);
        for (var row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException(row.size() + " cells under " + header.size() + " columns: " + row);
            }
            record(row, text);
        }
        return text.toString();
    }

    private static void record(List<String> cells, StringBuilder text) {
        for (int i = 0; i < cells.size(); i++) {
            text.append(i == 0 ? "" : ",").append(field(cells.get(i)));
        }
        text.append("\r\n");
    }

    private static String field(String cell) {
        boolean runs = !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 && !NUMBER.matcher(cell).matches();
        String safe = runs || isGuarded(cell) ? "'" + cell : cell;
        boolean quotes = safe.chars().anyMatch(read -> ",\"\r\n".indexOf(read) >= 0);
        return quotes ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** Whether a cell is text behind an apostrophe that keeps it from being run. */
    static boolean isGuarded(String cell) {
        int behind = 0;
        while (behind < cell.length() && cell.charAt(behind) == '\'') {
            behind++;
        }
        return behind > 0 && behind < cell.length() && FORMULA_STARTS.indexOf(cell.charAt(behind)) >= 0;
    }
}
