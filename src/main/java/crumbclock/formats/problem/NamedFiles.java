package crumbclock.formats.problem;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.util.Optional;

/** Opens files that another file names; paths start at the naming file's folder. */
public final class NamedFiles {

    private NamedFiles() {
    }

    /** The file named at the spot; empty, with an issue at that place, when there is none. */
    public static Optional<SourceFile> open(Spot spot, IssueLog log) {
        String named = spot.node().asText();
        try {
            var path = spot.doc().source().folder().resolve(named).normalize();
            if (named.isBlank() || !Files.isRegularFile(path)) {
                spot.fault(log, "the path of a file, from this file's folder", SourceFile.neighbours(path));
                return Optional.empty();
            }
            return SourceFile.read(path, log);
        } catch (InvalidPathException noPath) {
            spot.fault(log, "the path of a file, from this file's folder", "");
            return Optional.empty();
        }
    }
}
