package crumbclock.formats.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;

/** The folders of plans that a promise.json or a compare.json names. */
public final class FolderNames {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** As the program makes them: none leads out of the folder. */
    private static final String NAME = "[a-z0-9][a-z0-9-]*";

    private FolderNames() {
    }

    /** Each once, in the order of the file; none for a text that this program did not write. */
    public static List<String> of(String text) {
        try {
            JsonNode tree = MAPPER.readTree(text);
            boolean own = tree.path("problem").isTextual() && (tree.path("offers").isArray() || tree.path("rows").isArray());
            return own ? tree.findValuesAsText("plan").stream().filter(name -> name.matches(NAME)).distinct().toList() : List.of();
        } catch (JsonProcessingException otherwise) {
            return List.of();
        }
    }
}
