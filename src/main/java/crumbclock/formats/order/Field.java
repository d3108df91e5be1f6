package crumbclock.formats.order;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can be said of an order or a cake: a column of the table, a key of the JSON file. */
enum Field {
    ORDER("order", "id", true), ORDER_TITLE("order_title", "title", true),
    CAKE("cake", "id", false), TITLE("title", "title", false), METHOD("method", "method", false),
    SIZE("size", "size", false), LAYERS("layers", "layers", false), PIECES("pieces", "pieces", false),
    SERVINGS("servings", "servings", false),
    HAND_OVER("hand_over", "handOver", true), HAND_OVER_FROM("hand_over_from", "handOverFrom", true), WAY("way", "way", true),
    DOOR_MINUTES("door_minutes", "doorMinutes", true), LOAD_MINUTES("load_minutes", "loadMinutes", true),
    ROAD_MINUTES("road_minutes", "roadMinutes", true), SET_UP_MINUTES("set_up_minutes", "setUpMinutes", true),
    IMPORTANCE("importance", "importance", true), EARLIEST("earliest", "earliest", true), BUFFER("buffer", "bufferMinutes", true),
    FREE_FROM("free_from", "freeFrom", false), CONTAINS("contains", "contains", false), MESSAGE("message", "message", false),
    BATCHES("batches", "batches", false), OPTIONS("options", "options", false);

    /** Columns that a table cannot do without. */
    static final List<Field> NEEDED = List.of(ORDER, METHOD, SIZE, HAND_OVER);

    private final String column;
    private final String key;
    private final boolean ofOrder;

    Field(String column, String key, boolean ofOrder) {
        this.column = column;
        this.key = key;
        this.ofOrder = ofOrder;
    }

    String column() {
        return column;
    }

    String key() {
        return key;
    }

    /** Whether it is said once for the whole order, rather than for each cake. */
    boolean ofOrder() {
        return ofOrder;
    }

    /** The column of that name, in any case, with spaces, underscores and hyphens left out of account. */
    static Optional<Field> findByColumn(String name) {
        String sought = plain(name);
        return Arrays.stream(values()).filter(field -> plain(field.column).equals(sought)).findFirst();
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }
}
