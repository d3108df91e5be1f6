package crumbclock.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Records as a table: a row each, their components as columns. A component that is a record itself adds its own
 * columns; {@code NaN} and {@code null} are told as a dash.
 */
public final class Table {

    private Table() {
    }

    /** Writes STEM.csv and STEM.md and prints the second. */
    public static void write(Path stem, String title, List<? extends Record> rows) {
        List<String> names = names(rows.get(0).getClass());
        List<List<String>> cells = rows.stream().map(Table::cells).toList();
        String markdown = "# " + title + "\n\n" + line(names) + line(Collections.nCopies(names.size(), "---"))
                + cells.stream().map(Table::line).collect(Collectors.joining());
        save(stem, ".md", markdown);
        writeCsv(stem, rows);
        System.out.println(markdown);
    }

    /** Writes STEM.csv only. */
    public static void writeCsv(Path stem, List<? extends Record> rows) {
        save(stem, ".csv", Stream.concat(Stream.of(names(rows.get(0).getClass())), rows.stream().map(Table::cells))
                .map(row -> String.join(",", row)).collect(Collectors.joining("\n", "", "\n")));
    }

    private static void save(Path stem, String ending, String text) {
        try {
            Path file = stem.resolveSibling(stem.getFileName() + ending);
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, text);
            System.err.println("wrote " + file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String line(List<String> cells) {
        return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static List<String> names(Class<?> type) {
        return Arrays.stream(type.getRecordComponents()).flatMap(part -> part.getType().isRecord()
                ? names(part.getType()).stream() : Stream.of(words(part.getName()))).toList();
    }

    /** {@code meanGap} as "mean gap". */
    private static String words(String camel) {
        return camel.replaceAll("(?<=[a-z])(?=[A-Z0-9])", " ").toLowerCase(Locale.ROOT);
    }

    private static List<String> cells(Record row) {
        List<String> cells = new ArrayList<>();
        for (RecordComponent part : row.getClass().getRecordComponents()) {
            Object value = value(part, row);
            if (value instanceof Record inner) {
                cells.addAll(cells(inner));
            } else if (value instanceof Double number) {
                cells.add(number.isNaN() ? "-" : String.format(Locale.ROOT, Math.abs(number) < 10 ? "%.3f" : "%.1f", number));
            } else {
                cells.add(value == null ? "-" : value.toString().replace(',', ';').replace('|', '/'));
            }
        }
        return cells;
    }

    private static Object value(RecordComponent part, Record row) {
        try {
            part.getAccessor().setAccessible(true);
            return part.getAccessor().invoke(row);
        } catch (ReflectiveOperationException wrong) {
            throw new IllegalStateException(wrong);
        }
    }
}
