package crumbclock.formats.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A JSON file as a tree that knows on which line each value stands. Two equal keys in one object are refused: the JSON
 * Schema core specification leaves open which of them counts (section 4.2.1).
 */
public final class JsonDoc {

    private static final JsonFactory PARSERS = new JsonFactory();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final SourceFile source;
    private final Map<String, Integer> lineByPointer = new HashMap<>();
    private JsonNode root = NODES.missingNode();

    private JsonDoc(SourceFile source) {
        this.source = source;
    }

    /** Parses a file; empty, with an issue, when it is no JSON. Duplicate keys are issues too, the first value is kept. */
    public static Optional<JsonDoc> parse(SourceFile source, IssueLog log) {
        var doc = new JsonDoc(source);
        try (JsonParser parser = PARSERS.createParser(source.text())) {
            if (parser.nextToken() == null) {
                log.add(new Issue(source.name(), 1, "", "an empty file", "a JSON object", ""));
                return Optional.empty();
            }
            doc.root = doc.value(parser, "", log);
            if (parser.nextToken() != null) {
                log.add(new Issue(source.name(), parser.currentTokenLocation().getLineNr(), "",
                        "more text after the closing bracket", "the end of the file", "Look for a bracket too many above."));
                return Optional.empty();
            }
            return Optional.of(doc);
        } catch (JsonProcessingException broken) {
            int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNr();
            log.add(new Issue(source.name(), line, "", firstLine(broken.getOriginalMessage()), "JSON",
                    "Look here and just above for a missing comma, quote or bracket."));
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from a string failed", impossible);
        }
        return Optional.empty();
    }

    public SourceFile source() {
        return source;
    }

    public JsonNode root() {
        return root;
    }

    /** Line of the value or key at the pointer, or of the nearest value around it. */
    public int line(String pointer) {
        String at = pointer;
        while (!lineByPointer.containsKey(at)) {
            int slash = at.lastIndexOf('/');
            if (slash < 0) {
                return 1;
            }
            at = at.substring(0, slash);
        }
        return lineByPointer.get(at);
    }

    private JsonNode value(JsonParser parser, String pointer, IssueLog log) throws IOException {
        lineByPointer.putIfAbsent(pointer, parser.currentTokenLocation().getLineNr());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, pointer, log);
            case START_ARRAY -> array(parser, pointer, log);
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT -> parser.getNumberType() == JsonParser.NumberType.BIG_INTEGER
                    ? NODES.numberNode(parser.getBigIntegerValue()) : NODES.numberNode(parser.getLongValue());
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDecimalValue());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(parser.getBooleanValue());
            default -> NODES.nullNode();
        };
    }

    private JsonNode object(JsonParser parser, String pointer, IssueLog log) throws IOException {
        var object = NODES.objectNode();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            int line = parser.currentTokenLocation().getLineNr();
            String at = pointer + "/" + key.replace("~", "~0").replace("/", "~1");
            if (object.has(key)) {
                log.add(new Issue(source.name(), line, at, "the key \"" + key + "\" again", "each key once in an object",
                        "The first one is on line " + line(at) + "."));
            }
            lineByPointer.putIfAbsent(at, line);
            parser.nextToken();
            var value = value(parser, at, log);
            if (!object.has(key)) {
                object.set(key, value);
            }
        }
        return object;
    }

    private JsonNode array(JsonParser parser, String pointer, IssueLog log) throws IOException {
        var array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(parser, pointer + "/" + array.size(), log));
        }
        return array;
    }

    /** The parser's own words, without its character codes and places. */
    private static String firstLine(String message) {
        String line = message.lines().findFirst().orElse("")
                .replaceAll("\\(([^()]*) \\(code [^()]*\\)\\)", "$1").replaceAll(" \\(start marker at.*", "");
        return line.isEmpty() ? "a fault" : Character.toLowerCase(line.charAt(0)) + line.substring(1);
    }
}
