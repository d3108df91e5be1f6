package crumbclock.formats.order;

import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.csv.CsvTable;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Gathers the orders of a problem from tables, JSON files and the problem file itself, in the order in which they are read. */
public final class OrdersReader {

    private final IssueLog log;
    private final OrderConverter converter;
    private final List<OrderRequest> orders = new ArrayList<>();
    private final Map<String, Fields> cakeFields = new LinkedHashMap<>();
    private final Set<String> orderIds = new HashSet<>();
    private final Set<String> batchIds;

    public OrdersReader(ProblemCalendar calendar, Names names, int bufferMinutes, IssueLog log) {
        this.log = log;
        this.batchIds = names.batches();
        this.converter = new OrderConverter(calendar, new CakeConverter(names), bufferMinutes);
    }

    /** All orders read so far. */
    public List<OrderRequest> orders() {
        return List.copyOf(orders);
    }

    /** Reads a file by its name's ending: a table for .csv, .tsv or .txt, JSON for .json. */
    public void file(SourceFile file) {
        if (file.name().toLowerCase(Locale.ROOT).endsWith(".json")) {
            JsonLoader.loadWithSpot(file, "orders", OrdersFile.class, log).ifPresent(loaded -> {
                var list = loaded.spot().child("orders");
                for (int i = 0; i < list.node().size(); i++) {
                    order(list.child(i));
                }
            });
        } else {
            CsvTable.read(file, log).ifPresent(this::table);
        }
    }

    /** What the schema of an orders file leaves to bind: nothing that the places themselves do not tell. */
    private record OrdersFile() {
    }

    /** One order as a JSON object, checked against its schema already. */
    public void order(Spot spot) {
        var cakes = spot.child("cakes");
        List<JsonFields> fields = new ArrayList<>();
        for (int i = 0; i < cakes.node().size(); i++) {
            fields.add(new JsonFields(cakes.child(i), log));
        }
        if (!fields.isEmpty()) {
            add(new JsonFields(spot, log), fields);
        }
    }

    private void table(CsvTable table) {
        var columns = columns(table);
        if (columns.size() < Field.NEEDED.size() || !columns.keySet().containsAll(Field.NEEDED)) {
            return;
        }
        Map<String, List<RowFields>> rowsByOrder = new LinkedHashMap<>();
        for (var row : table.rows()) {
            var fields = new RowFields(table.source().name(), row, columns, log);
            if (fields.text(Field.ORDER).isEmpty()) {
                fields.fault(Field.ORDER, "the order that the cake belongs to", "");
            } else {
                rowsByOrder.computeIfAbsent(fields.text(Field.ORDER), unseen -> new ArrayList<>()).add(fields);
            }
        }
        for (var rows : rowsByOrder.values()) {
            rows.subList(1, rows.size()).forEach(row -> agrees(row, rows.get(0)));
            add(rows.get(0), rows);
        }
    }

    private Map<Field, Integer> columns(CsvTable table) {
        Map<Field, Integer> columns = new EnumMap<>(Field.class);
        var known = Arrays.stream(Field.values()).map(Field::column).toList();
        for (int i = 0; i < table.header().size(); i++) {
            String name = table.header().get(i).strip();
            boolean unused = name.isEmpty() && isBlank(table, i);
            var field = Field.findByColumn(name);
            if (field.isEmpty() && !unused) {
                headerIssue(table, "a column " + Spot.quote(name), "a column that is known", Nearest.advice(name, known));
            } else if (field.isPresent() && columns.putIfAbsent(field.get(), i) != null) {
                headerIssue(table, "the column " + Spot.quote(name) + " again", "each column once", "");
            }
        }
        for (Field needed : Field.NEEDED) {
            if (!columns.containsKey(needed)) {
                headerIssue(table, "no column " + needed.column(), "the columns order, method, size and hand_over at least", "");
            }
        }
        return columns;
    }

    private static boolean isBlank(CsvTable table, int column) {
        return table.rows().stream().allMatch(row -> row.cells().get(column).isBlank());
    }

    private void headerIssue(CsvTable table, String read, String expected, String advice) {
        log.add(new Issue(table.source().name(), 1, "header", read, expected, advice));
    }

    /** A later row of an order says nothing about the order, or the same again. */
    private static void agrees(RowFields row, RowFields first) {
        for (Field field : Field.values()) {
            if (field.ofOrder() && !row.text(field).isEmpty() && !row.text(field).equals(first.text(field))) {
                row.fault(field, "nothing, or " + Spot.quote(first.text(field)) + " as on line " + first.row().line()
                        + ", the first row of order " + first.text(Field.ORDER), "");
            }
        }
    }

    private void add(Fields order, List<? extends Fields> cakes) {
        var request = converter.convert(order, cakes);
        if (!orderIds.add(request.id())) {
            order.fault(Field.ORDER, "an id that no other order has", "It was read before.");
            return;
        }
        for (int i = 0; i < cakes.size(); i++) {
            String id = request.cakes().get(i).id();
            if (batchIds.contains(id) || cakeFields.putIfAbsent(id, cakes.get(i)) != null) {
                cakes.get(i).fault(Field.CAKE, "an id that no other cake or batch has", "\"" + id + "\" is taken.");
            }
        }
        orders.add(request);
    }

    /** Reports a doubt about each allergen that a cake must be free from, where {@code doubt} has one. */
    public void checkAllergens(UnaryOperator<String> doubt) {
        for (var order : orders) {
            for (CakeRequest cake : order.cakes()) {
                for (String allergen : cake.freeFrom()) {
                    String found = doubt.apply(allergen);
                    if (!found.isEmpty() && cakeFields.containsKey(cake.id())) {
                        cakeFields.get(cake.id()).fault(Field.FREE_FROM, "allergens as the methods name them", found);
                    }
                }
            }
        }
    }

    /**
     * Reports that a cake cannot be made as it is asked for.
     *
     * @return false when no cake has that id
     */
    public boolean faultOfCake(String cakeId, String read, String expected) {
        var fields = cakeFields.get(cakeId);
        if (fields != null) {
            var field = read.startsWith("option") ? Field.OPTIONS : read.startsWith("component") ? Field.BATCHES : Field.METHOD;
            fields.fault(field, read, expected, "");
        }
        return fields != null;
    }
}
