package crumbclock.formats.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import java.util.List;
import java.util.Optional;

/**
 * From a JSON file to a record, by way of its schema.
 *
 * <p>A value that breaks the schema is reported and left out; when the rest still obeys the schema it is bound nevertheless, so that
 * later checks can report their faults at once. Nothing may be planned while the log holds an issue.
 *
 * <p>Records need no annotations: components have the names of the keys, absent keys are null; a number or a truth value may be bound
 * to a {@code String}, a single value to a {@code List} of one.
 */
public final class JsonLoader {

    private static final ObjectMapper MAPPER = new ObjectMapper()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES) // "$schema"; others are the schema's business
            .enable(DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY);

    private JsonLoader() {
    }

    /** What was bound, and where it stands. */
    public record Loaded<T>(T value, Spot spot) {
    }

    /** Reads, checks and binds a whole file; empty when nothing can be made of it. */
    public static <T> Optional<T> load(SourceFile file, String schemaName, Class<T> type, IssueLog log) {
        return loadWithSpot(file, schemaName, type, log).map(Loaded::value);
    }

    /** The same, with the place that later faults are pinned to. */
    public static <T> Optional<Loaded<T>> loadWithSpot(SourceFile file, String schemaName, Class<T> type, IssueLog log) {
        return JsonDoc.parse(file, log).flatMap(doc -> load(Spot.root(doc), schemaName, type, log));
    }

    /** Checks and binds a part of a file, such as a kitchen inside a problem. */
    public static <T> Optional<Loaded<T>> load(Spot spot, String schemaName, Class<T> type, IssueLog log) {
        var faults = SchemaFaults.find(spot.node(), schemaName);
        faults.forEach(fault -> SchemaFaults.report(fault, spot, log));
        JsonNode usable = faults.isEmpty() ? spot.node() : without(faults, spot.node());
        if (!faults.isEmpty() && !SchemaFaults.find(usable, schemaName).isEmpty()) {
            return Optional.empty();
        }
        return bind(usable, spot, type, log);
    }

    /** Binds a part of a file whose whole was checked against its schema already. */
    public static <T> Optional<T> bound(JsonNode tree, Spot spot, Class<T> type, IssueLog log) {
        return bind(tree, spot, type, log).map(Loaded::value);
    }

    private static <T> Optional<Loaded<T>> bind(JsonNode tree, Spot spot, Class<T> type, IssueLog log) {
        try {
            return Optional.of(new Loaded<>(MAPPER.treeToValue(tree, type), spot));
        } catch (JsonProcessingException misfit) {
            spot.fault(log, "a value that does not fit", misfit.getOriginalMessage(), "");
            return Optional.empty();
        }
    }

    /** The tree less unknown keys and less wrong values of keys; what is wrong in a list stays, so that places keep their numbers. */
    private static JsonNode without(List<SchemaFaults.Fault> faults, JsonNode tree) {
        JsonNode copy = tree.deepCopy();
        for (var fault : faults) {
            String pointer = fault.keyword().equals("additionalProperties")
                    ? Spot.root(null).child(fault.key()).pointer() : "";
            String whole = fault.pointer() + pointer;
            int slash = whole.lastIndexOf('/');
            boolean missing = fault.keyword().equals("required");
            if (slash >= 0 && !missing && copy.at(whole.substring(0, slash)) instanceof ObjectNode parent) {
                parent.remove(whole.substring(slash + 1).replace("~1", "/").replace("~0", "~"));
            }
        }
        return copy;
    }
}
