package crumbclock.formats.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a JSON tree for people: two spaces a level, and what holds no other objects on one line when it fits.
 * Equal trees give equal text; lines end with {@code \n}.
 */
public final class JsonText {

    private static final int LONGEST_LINE = 240;

    private JsonText() {
    }

    public static String write(JsonNode tree) {
        var text = new StringBuilder();
        write(tree, "", text);
        return text.append('\n').toString();
    }

    private static void write(JsonNode node, String indent, StringBuilder text) {
        boolean single = !node.isContainerNode();
        if (single || isFlat(node) && spaced(node).length() + indent.length() <= LONGEST_LINE) {
            text.append(spaced(node));
            return;
        }
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        String inner = indent + "  ";
        text.append(node.isObject() ? "{\n" : "[\n");
        for (int i = 0; i < node.size(); i++) {
            text.append(inner);
            if (node.isObject()) {
                text.append(key(keys.get(i))).append(": ");
            }
            write(node.isObject() ? node.get(keys.get(i)) : node.get(i), inner, text);
            text.append(i + 1 < node.size() ? ",\n" : "\n");
        }
        text.append(indent).append(node.isObject() ? '}' : ']');
    }

    private static String spaced(JsonNode node) {
        if (!node.isContainerNode()) {
            return node.toString();
        }
        List<String> parts = new ArrayList<>();
        if (node.isObject()) {
            node.properties().forEach(entry -> parts.add(key(entry.getKey()) + ": " + spaced(entry.getValue())));
            return parts.isEmpty() ? "{}" : "{ " + String.join(", ", parts) + " }";
        }
        node.forEach(item -> parts.add(spaced(item)));
        return "[" + String.join(", ", parts) + "]";
    }

    /** Single values, lists of them, and objects of both: a list of objects gets a line for each. */
    private static boolean isFlat(JsonNode node) {
        for (JsonNode child : node) {
            if (child.isContainerNode() && (node.isArray() || child.isObject() || !isFlat(child))) {
                return false;
            }
        }
        return true;
    }

    private static String key(String key) {
        return TextNode.valueOf(key).toString();
    }
}
