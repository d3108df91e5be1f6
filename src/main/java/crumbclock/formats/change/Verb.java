package crumbclock.formats.change;

import crumbclock.formats.order.OrderEdits;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The key of a change that says what it does, and the keys that may stand beside it. */
enum Verb {
    DROP("drop", List.of(), List.of()),
    ADD("add", List.of(), List.of()),
    ADD_FROM("addFrom", List.of(), List.of()),
    EDIT("edit", List.of(), List.copyOf(OrderEdits.keys())),
    COPY("copy", List.of("as"), List.copyOf(OrderEdits.keys())),
    AWAY("away", List.of(), List.of("pieces", "from", "until")),
    HOURS("hours", List.of("from", "until"), List.of()),
    MORE("more", List.of(), List.of("pieces")),
    BRING("bring", List.of(), List.of()),
    GOODS("goods", List.of("on"), List.of("x", "y", "width", "depth", "height", "mass", "from", "until")),
    STOCK("stock", List.of(), List.of("of")),
    TIME("time", List.of(), List.of("of", "percent", "minutes")),
    WINDOW("window", List.of("percent"), List.of("of"));

    /** Those after which there are more names than before. */
    static final List<Verb> BRINGING = List.of(ADD, ADD_FROM, COPY, BRING);

    private final String key;
    private final List<String> needed;
    private final Set<String> known;

    Verb(String key, List<String> needed, List<String> more) {
        this.key = key;
        this.needed = needed;
        this.known = new TreeSet<>(more);
        known.addAll(needed);
        known.add(key);
        known.add("note");
    }

    String key() {
        return key;
    }

    List<String> needed() {
        return needed;
    }

    Set<String> known() {
        return known;
    }

    static Optional<Verb> find(String key) {
        return Arrays.stream(values()).filter(verb -> verb.key.equals(key)).findFirst();
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(Verb::key).toList();
    }
}
