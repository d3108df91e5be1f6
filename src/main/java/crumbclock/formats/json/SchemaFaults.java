package crumbclock.formats.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Says in plain language what a schema found, with the words of the schema's own descriptions. */
final class SchemaFaults {

    private SchemaFaults() {
    }

    /**
     * One fault of a value against its schema.
     *
     * @param pointer the value, from the root of what was checked
     * @param keyword the schema's keyword that it breaks
     * @param key     the missing or unknown key; empty for other keywords
     * @param schema  the schema that holds the keyword
     */
    record Fault(String pointer, String keyword, String key, JsonNode schema, String plainMessage) {
    }

    /** All faults of a tree, in the order of their places. */
    static List<Fault> find(JsonNode tree, String schemaName) {
        List<Fault> faults = new ArrayList<>();
        for (ValidationMessage message : Schemas.named(schemaName).validate(tree)) {
            String keyword = message.getType();
            String location = message.getSchemaLocation().toString();
            int end = location.lastIndexOf("/" + keyword);
            var schema = Schemas.part(end < 0 ? location : location.substring(0, end));
            var fault = new Fault(message.getInstanceLocation().toString(), keyword,
                    message.getProperty() == null ? "" : message.getProperty(), schema, message.getMessage());
            if (!faults.contains(fault)) {
                faults.add(fault);
            }
        }
        faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::key).thenComparing(Fault::keyword));
        return faults;
    }

    static void report(Fault fault, Spot root, IssueLog log) {
        var spot = new Spot(root.doc(), root.pointer() + fault.pointer());
        var limit = fault.schema().path(fault.keyword());
        switch (fault.keyword()) {
            case "additionalProperties" -> {
                var known = keys(fault.schema().path("properties"));
                spot.child(fault.key()).fault(log, "the key \"" + fault.key() + "\"",
                        fault.schema().has("patternProperties") ? description(fault.schema()) : "a key that is known here",
                        Nearest.advice(fault.key(), known));
            }
            case "required" -> spot.fault(log, "no key \"" + fault.key() + "\"",
                    "the key \"" + fault.key() + "\"" + purpose(fault.schema().path("properties").path(fault.key())), "");
            case "enum" -> {
                List<String> values = new ArrayList<>();
                limit.forEach(value -> values.add(value.asText()));
                spot.fault(log, "one of " + String.join(", ", values), Nearest.advice(spot.node().asText(), values));
            }
            case "minimum" -> spot.fault(log, "at least " + limit.asText(), "");
            case "maximum" -> spot.fault(log, "at most " + limit.asText(), "");
            case "minItems" -> spot.fault(log, "at least " + limit.asText() + " entry", "");
            default -> spot.fault(log, expected(fault), "");
        }
    }

    private static String expected(Fault fault) {
        String described = description(fault.schema());
        if (!fault.keyword().equals("type")) {
            return described.isEmpty() ? fault.plainMessage() : described;
        }
        boolean saysItsKind = described.startsWith("a ") || described.startsWith("an ") || described.startsWith("whole ")
                || described.startsWith("one ") || described.startsWith("path ") || described.startsWith("times ");
        return saysItsKind ? described : types(fault.schema().path("type")) + (described.isEmpty() ? "" : " (" + described + ")");
    }

    private static String types(JsonNode type) {
        List<JsonNode> all = new ArrayList<>();
        if (type.isArray()) {
            type.forEach(all::add);
        } else {
            all.add(type);
        }
        return all.stream().map(one -> switch (one.asText()) {
            case "string" -> "a text";
            case "integer" -> "a whole number";
            case "number" -> "a number";
            case "boolean" -> "true or false";
            case "array" -> "a list";
            default -> "an object";
        }).collect(Collectors.joining(" or "));
    }

    private static String purpose(JsonNode property) {
        String described = description(property);
        return described.isEmpty() ? "" : " (" + described + ")";
    }

    private static String description(JsonNode schema) {
        String ref = schema.path("$ref").asText();
        String text = schema.path("description").asText();
        if (text.isEmpty() && ref.contains(".schema.json#")) {
            return description(Schemas.part(Schemas.BASE + ref));
        }
        String open = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        return open.isEmpty() ? "" : Character.toLowerCase(open.charAt(0)) + open.substring(1);
    }

    private static List<String> keys(JsonNode properties) {
        List<String> keys = new ArrayList<>();
        properties.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
