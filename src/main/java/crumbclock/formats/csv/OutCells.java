package crumbclock.formats.csv;

import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What the written tables have in common: the dialect, times, and cells that stay text in a spreadsheet. */
final class OutCells {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Problem problem;

    OutCells(Problem problem) {
        this.problem = problem;
    }

    /** One line a record, the first with the column names, ends of lines CR LF as RFC 4180 has them. */
    static String table(List<String> header, List<List<Object>> rows) {
        var out = new StringBuilder();
        var format = CSVFormat.RFC4180.builder().setHeader(header.toArray(String[]::new)).get();
        try (var printer = new CSVPrinter(out, format)) {
            for (List<Object> row : rows) {
                printer.printRecord(row.stream().map(OutCells::cell).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be written", e);
        }
        return out.toString();
    }

    /** Numbers as they are; a text that would be run as a formula stays text. */
    private static Object cell(Object value) {
        return value instanceof Number ? value : FormulaGuard.guarded(value.toString());
    }

    /** Local clock time; the exact minute stands in a column of its own, as an hour can come twice in autumn. */
    String time(int minute) {
        return TIME.format(problem.clock().at(minute));
    }

    /** Ids of the orders that a cake, a batch or an order's own step belongs to, separated by spaces. */
    String orders(String ownerId) {
        return problem.orders().stream().filter(order -> belongs(order, ownerId)).map(Order::id)
                .collect(Collectors.joining(" "));
    }

    private static boolean belongs(Order order, String ownerId) {
        return order.id().equals(ownerId) || order.cakes().stream()
                .anyMatch(cake -> cake.id().equals(ownerId) || cake.batchIds().contains(ownerId));
    }

    String title(String ownerId) {
        for (Order order : problem.orders()) {
            if (order.id().equals(ownerId)) {
                return order.title();
            }
            for (var cake : order.cakes()) {
                if (cake.id().equals(ownerId)) {
                    return cake.title();
                }
            }
        }
        return problem.batches().stream().filter(batch -> batch.id().equals(ownerId)).map(batch -> batch.title())
                .findFirst().orElse("");
    }
}
