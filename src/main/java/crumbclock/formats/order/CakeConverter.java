package crumbclock.formats.order;

import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;
import crumbclock.formats.issue.Nearest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One row or object to one cake. Faults go to the log; what is unreadable is replaced, so that all faults are found. */
record CakeConverter(Names names) {

    static final String ID_EXPECTED = "a short name of letters, digits, '.', '_' and '-'";

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,59}");
    private static final Footprint STAND_IN = new Footprint(true, 200, 200);

    static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /**
     * @param orderId of the order it belongs to
     * @param number  which cake of the order, from 1
     * @param count   how many cakes the order has
     */
    CakeRequest convert(Fields fields, String orderId, int number, int count) {
        String method = method(fields);
        int pieces = whole(fields, Field.PIECES, 1, 10_000, 1);
        String title = fields.text(Field.TITLE).isEmpty() ? fields.text(Field.SIZE) + " " + method : fields.text(Field.TITLE);
        return new CakeRequest(id(fields, orderId, number, count), title, method, tiers(fields, pieces), pieces,
                whole(fields, Field.SERVINGS, 0, 10_000, pieces > 1 ? pieces : 0), fields.text(Field.MESSAGE),
                allergens(fields, Field.CONTAINS), allergens(fields, Field.FREE_FROM), batches(fields),
                fields.choices(Field.OPTIONS));
    }

    private static String id(Fields fields, String orderId, int number, int count) {
        String own = fields.text(Field.CAKE);
        if (own.isEmpty()) {
            return count == 1 ? orderId : orderId + "/" + number;
        }
        String inOrder = own.startsWith(orderId + "/") ? own.substring(orderId.length() + 1) : own;
        if (!isId(inOrder)) {
            fields.fault(Field.CAKE, ID_EXPECTED, "");
            return orderId + "/" + number;
        }
        return own.equals(orderId) && count == 1 ? orderId : orderId + "/" + inOrder;
    }

    private String method(Fields fields) {
        String method = fields.text(Field.METHOD);
        if (method.isEmpty()) {
            fields.fault(Field.METHOD, "the id of a method", names.complete() ? Nearest.advice("", names.cakeMethods()) : "");
        } else if (names.complete() && !names.cakeMethods().contains(method)) {
            fields.fault(Field.METHOD, "the id of a method that makes cakes", Nearest.advice(method, names.cakeMethods()));
        }
        return method;
    }

    private static List<TierRequest> tiers(Fields fields, int pieces) {
        String size = fields.text(Field.SIZE);
        var sizes = TierText.sizes(size);
        if (sizes.isEmpty()) {
            fields.fault(Field.SIZE, TierText.SIZE_EXPECTED, "");
            return List.of(new TierRequest(STAND_IN, 1));
        }
        int count = sizes.get().size();
        String layers = fields.text(Field.LAYERS).isEmpty() && pieces > 1 ? "1" : fields.text(Field.LAYERS);
        var read = TierText.layers(layers, count);
        if (read.isEmpty()) {
            fields.fault(Field.LAYERS, TierText.LAYERS_EXPECTED,
                    count == 1 ? "The size has one tier." : "The size has " + count + " tiers.");
            return List.of(new TierRequest(STAND_IN, 1));
        }
        return TierText.tiers(sizes.get(), read.get());
    }

    private Map<String, String> batches(Fields fields) {
        var batches = fields.choices(Field.BATCHES);
        for (String batch : new TreeSet<>(batches.values())) {
            if (names.complete() && !names.batches().contains(batch) && !batch.equals(CakeRequest.IN_STOCK)) {
                fields.fault(Field.BATCHES, "batches that the problem lists under \"batches\"",
                        "There is no batch \"" + batch + "\". " + Nearest.advice(batch, names.batches()));
            }
        }
        return batches;
    }

    /** Allergens in lower case, since "Nuts" and "nuts" must never count as two. */
    private static Set<String> allergens(Fields fields, Field field) {
        for (String word : fields.list(field)) {
            if (!isId(word)) {
                fields.fault(field, "allergens such as nuts, milk, egg", "");
            }
        }
        return fields.list(field).stream().map(word -> word.toLowerCase(Locale.ROOT)).collect(Collectors.toCollection(TreeSet::new));
    }

    static int whole(Fields fields, Field field, int least, int most, int fallback) {
        if (fields.text(field).isEmpty()) {
            return fallback;
        }
        var number = WholeNumber.parse(fields.text(field), least, most);
        if (number.isEmpty()) {
            fields.fault(field, String.format(Locale.ROOT, "a whole number from %d to %,d", least, most), "");
        }
        return number.orElse(least);
    }

}
