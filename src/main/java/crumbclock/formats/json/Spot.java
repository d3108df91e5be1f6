package crumbclock.formats.json;

import com.fasterxml.jackson.databind.JsonNode;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;

/**
 * One place in a JSON file: what a fault found after binding is pinned to.
 *
 * @param pointer JSON pointer (RFC 6901), empty for the whole file
 */
public record Spot(JsonDoc doc, String pointer) {

    private static final int LONGEST_SHOWN = 60;

    public static Spot root(JsonDoc doc) {
        return new Spot(doc, "");
    }

    public Spot child(String key) {
        return new Spot(doc, pointer + "/" + key.replace("~", "~0").replace("/", "~1"));
    }

    public Spot child(int index) {
        return new Spot(doc, pointer + "/" + index);
    }

    /** The value here; a missing node when there is none. */
    public JsonNode node() {
        return doc.root().at(pointer);
    }

    /** Whether something was wrong here already, so that a fault that only follows from it need not be told. */
    public boolean isFaulty(IssueLog log) {
        return log.holdsAt(doc.source().name(), pointer);
    }

    /** Reports what stands here. */
    public void fault(IssueLog log, String expected, String advice) {
        fault(log, show(node()), expected, advice);
    }

    public void fault(IssueLog log, String read, String expected, String advice) {
        log.add(new Issue(doc.source().name(), doc.line(pointer), pointer, read, expected, advice));
    }

    /** A value shortened to one line, texts in quotes. */
    public static String show(JsonNode node) {
        return switch (node.getNodeType()) {
            case MISSING -> "nothing";
            case OBJECT -> "an object";
            case ARRAY -> node.isEmpty() ? "an empty list" : "a list";
            case STRING -> quote(node.textValue());
            default -> node.asText();
        };
    }

    /** Text in quotes, shortened to one line. */
    public static String quote(String text) {
        String line = text.replaceAll("\\R", " ");
        return '"' + (line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "..." : line) + '"';
    }
}
