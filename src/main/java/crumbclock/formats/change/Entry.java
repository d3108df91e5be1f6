package crumbclock.formats.change;

import com.fasterxml.jackson.databind.JsonNode;
import crumbclock.formats.json.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * One change as it stands in a file.
 *
 * @param node what of it obeys the schema
 * @param spot where it stands
 */
record Entry(Verb verb, JsonNode node, Spot spot) {

    /** The text or number under a key; empty when there is none. */
    String text(String key) {
        return node.path(key).asText("").strip();
    }

    /** The same, or null, as readers of times want it. */
    String textOrNull(String key) {
        return node.has(key) ? text(key) : null;
    }

    int number(String key, int fallback) {
        return node.path(key).asInt(fallback);
    }

    boolean has(String key) {
        return node.has(key);
    }

    /** Where the value under the key stands. */
    Spot at(String key) {
        return spot.child(key);
    }

    /** What it does it to. */
    String object() {
        return text(verb.key());
    }

    Spot atObject() {
        return at(verb.key());
    }

    List<String> keys() {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
