package crumbclock.formats.problem;

import com.fasterxml.jackson.databind.JsonNode;
import crumbclock.formats.plan.FixedEntry;
import java.util.List;
import java.util.Map;

/**
 * A problem as its file has it.
 *
 * @param kitchen a path, or the kitchen itself
 * @param methods paths, or methods themselves
 * @param orders  a path, or a list of paths and orders
 * @param weights by name: points, and two times of day
 */
public record ProblemFile(String title, String start, String end, String zone, JsonNode kitchen, List<JsonNode> methods,
        JsonNode orders, List<BatchEntry> batches, Map<String, String> weights, Integer bufferMinutes, List<FixedEntry> fixed) {

    public ProblemFile {
        methods = methods == null ? List.of() : methods;
        batches = batches == null ? List.of() : batches;
        weights = weights == null ? Map.of() : weights;
        bufferMinutes = bufferMinutes == null ? 60 : bufferMinutes;
        fixed = fixed == null ? List.of() : fixed;
    }

    /** A shared batch. */
    public record BatchEntry(String id, String title, String method, String amount, String earliest, List<String> contains,
            List<String> freeFrom, Map<String, String> options) {

        public BatchEntry {
            title = title == null ? id : title;
            contains = contains == null ? List.of() : contains;
            freeFrom = freeFrom == null ? List.of() : freeFrom;
            options = options == null ? Map.of() : options;
        }
    }
}
