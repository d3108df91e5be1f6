package crumbclock.formats.change;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/** A file of changes as it stands there; each change is read at its place. */
record ChangesFile(String title, List<JsonNode> changes) {
}
