package crumbclock.formats.order;

import com.fasterxml.jackson.databind.JsonNode;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One order, or one of its cakes, in a JSON file. */
record JsonFields(Spot spot, IssueLog log) implements Fields {

    @Override
    public String text(Field field) {
        var node = node(field);
        return node.isValueNode() && !node.isNull() ? node.asText().strip() : "";
    }

    @Override
    public List<String> list(Field field) {
        List<String> words = new ArrayList<>();
        node(field).forEach(word -> words.add(word.asText()));
        return words;
    }

    @Override
    public Map<String, String> choices(Field field) {
        Map<String, String> choices = new TreeMap<>();
        node(field).properties().forEach(entry -> choices.put(entry.getKey(), entry.getValue().asText()));
        return choices;
    }

    @Override
    public void fault(Field field, String expected, String advice) {
        fault(field, Spot.show(node(field)), expected, advice);
    }

    /** The schema may have complained of the value already; once is enough. */
    @Override
    public void fault(Field field, String read, String expected, String advice) {
        var at = spot.child(field.key());
        if (!at.isFaulty(log)) {
            at.fault(log, read, expected, advice);
        }
    }

    private JsonNode node(Field field) {
        return spot.node().path(field.key());
    }
}
