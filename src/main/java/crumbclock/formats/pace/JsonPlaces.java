package crumbclock.formats.pace;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** Where each value of a JSON text begins and ends, so that one can be changed and every other letter stays. */
final class JsonPlaces {

    private static final JsonFactory PARSERS = new JsonFactory();

    /**
     * A value in its text.
     *
     * @param key     where the key in front of it begins; equal to {@code from} in a list
     * @param lastKey for an object, where its last key begins; −1 without one
     */
    record Place(int key, int from, int until, int lastKey) {
    }

    private final Map<String, Place> byPointer = new HashMap<>();

    /** @param text JSON that was parsed before without a fault */
    JsonPlaces(String text) {
        try (JsonParser parser = PARSERS.createParser(text)) {
            parser.nextToken();
            value(parser, "", start(parser));
        } catch (IOException impossible) {
            throw new IllegalStateException("text that was JSON before is none now", impossible);
        }
    }

    /** @param pointer of a value that is there (RFC 6901) */
    Place at(String pointer) {
        return byPointer.get(pointer);
    }

    private static int start(JsonParser parser) {
        return Math.toIntExact(parser.currentTokenLocation().getCharOffset());
    }

    private void value(JsonParser parser, String pointer, int key) throws IOException {
        int from = start(parser);
        int lastKey = -1;
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                lastKey = start(parser);
                String name = parser.currentName().replace("~", "~0").replace("/", "~1");
                parser.nextToken();
                value(parser, pointer + "/" + name, lastKey);
            }
        } else if (parser.currentToken() == JsonToken.START_ARRAY) {
            for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
                value(parser, pointer + "/" + i, start(parser));
            }
        } else if (parser.currentToken() == JsonToken.VALUE_STRING) {
            // a text is passed over only when it is asked for
            parser.getText();
        }
        byPointer.put(pointer, new Place(key, from, Math.toIntExact(parser.currentLocation().getCharOffset()), lastKey));
    }
}
