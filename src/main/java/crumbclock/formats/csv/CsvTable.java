package crumbclock.formats.csv;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table with a header line. Understands what spreadsheets do: comma, semicolon or tab between fields, a first line
 * {@code sep=;}, any line ends, quoted line breaks, blank rows, blank columns to the right, and an apostrophe before text that would
 * run as a formula.
 */
public record CsvTable(SourceFile source, List<String> header, List<Row> rows) {

    public CsvTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * One row with as many cells as the header.
     *
     * @param line where it starts, 1-based
     */
    public record Row(int line, List<String> cells) {

        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** Reads a table; empty when it has no header or a quote is never closed. Rows of a wrong length are issues and left out. */
    public static Optional<CsvTable> read(SourceFile source, IssueLog log) {
        int skipped = source.text().startsWith("sep=") ? 1 : 0;
        String text = skipped == 0 ? source.text() : source.text().replaceFirst("\\A.*(\\R|\\z)", "");
        List<Row> rows = new ArrayList<>();
        var format = CSVFormat.RFC4180.builder().setDelimiter(separator(text)).setIgnoreEmptyLines(false).get();
        int line = 1 + skipped;
        try (var parser = CSVParser.parse(new StringReader(text), format)) {
            var records = parser.iterator();
            while (records.hasNext()) {
                CSVRecord record = records.next();
                if (record.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(new Row(line, record.stream().map(FormulaGuard::unguarded).toList()));
                }
                line = (int) parser.getCurrentLineNumber() + 1 + skipped;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            log.add(new Issue(source.name(), line, "", "a quote that is not closed, or text behind a closing quote",
                    "a field in quotes that ends with a quote", "A quote inside such a field is written twice."));
            return Optional.empty();
        }
        if (rows.isEmpty()) {
            log.add(new Issue(source.name(), 1, "", "an empty table", "a first line with the names of the columns", ""));
            return Optional.empty();
        }
        return Optional.of(table(source, rows, log));
    }

    /**
     * The cells of one line by itself, without blanks around them; for tables that keep no form.
     *
     * @return empty when a quote is never closed, or text stands behind a closing one
     */
    public static Optional<List<String>> cells(String line) {
        var format = CSVFormat.RFC4180.builder().setDelimiter(separator(line)).setIgnoreSurroundingSpaces(true).get();
        try (var parser = CSVParser.parse(new StringReader(line), format)) {
            var records = parser.getRecords();
            return Optional.of(records.isEmpty() ? List.of() : records.get(0).stream().map(FormulaGuard::unguarded).map(String::strip).toList());
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            return Optional.empty();
        }
    }

    private static CsvTable table(SourceFile source, List<Row> rows, IssueLog log) {
        var header = trimmed(rows.get(0).cells(), 0);
        List<Row> body = new ArrayList<>();
        for (Row row : rows.subList(1, rows.size())) {
            var cells = trimmed(row.cells(), header.size());
            if (cells.size() == header.size()) {
                body.add(new Row(row.line(), cells));
            } else {
                log.add(new Issue(source.name(), row.line(), "", cells.size() + " fields",
                        header.size() + " fields, as many as the header has",
                        cells.size() > header.size() ? "A field that holds a separator needs quotes around it."
                                : "Look for a missing separator or an open quote."));
            }
        }
        return new CsvTable(source, header, body);
    }

    /** Without the blank cells on the right beyond {@code least}. */
    private static List<String> trimmed(List<String> cells, int least) {
        int size = cells.size();
        while (size > least && cells.get(size - 1).isBlank()) {
            size--;
        }
        return cells.subList(0, size);
    }

    /** The separator that the first line with text holds most often outside quotes; a comma when it holds none. */
    private static char separator(String text) {
        int[] counts = new int[3];
        String candidates = ",;\t";
        boolean quoted = false;
        boolean seen = false;
        for (int i = 0; i < text.length(); i++) {
            char read = text.charAt(i);
            quoted ^= read == '"';
            if (!quoted && (read == '\n' || read == '\r') && seen) {
                break;
            }
            seen |= !Character.isWhitespace(read);
            if (!quoted && candidates.indexOf(read) >= 0) {
                counts[candidates.indexOf(read)]++;
            }
        }
        int best = 0;
        for (int i = 1; i < counts.length; i++) {
            best = counts[i] > counts[best] ? i : best;
        }
        return candidates.charAt(best);
    }
}
