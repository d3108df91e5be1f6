package crumbclock.formats.file;

import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The text of one input file, without a byte-order mark.
 *
 * @param name   as the user gave it, for messages
 * @param text   the whole text
 * @param folder where relative paths inside the file start
 */
public record SourceFile(String name, String text, Path folder) {

    /** Nobody writes orders of this size by hand; more is a wrong file, and would only end in a lack of memory. */
    private static final long MOST_BYTES = 20_000_000;

    public SourceFile {
        text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** Text that stands in no file of its own; relative paths in it start at the working folder. */
    public static SourceFile ofText(String name, String text) {
        return new SourceFile(name, text, Path.of(""));
    }

    /** Reads a file; empty, with an issue, when it is missing, too big or not UTF-8. */
    public static Optional<SourceFile> read(Path path, IssueLog log) {
        String name = path.toString();
        try {
            if (!Files.isRegularFile(path)) {
                log.add(new Issue(name, 0, "", Files.isDirectory(path) ? "a folder" : "no such file",
                        "a file that can be read", neighbours(path)));
                return Optional.empty();
            }
            if (Files.size(path) > MOST_BYTES) {
                log.add(new Issue(name, 0, "", Files.size(path) + " bytes", "at most " + MOST_BYTES + " bytes", ""));
                return Optional.empty();
            }
            var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(path))).toString();
            var parent = path.getParent();
            return Optional.of(new SourceFile(name, text, parent == null ? Path.of("") : parent));
        } catch (CharacterCodingException notUtf8) {
            log.add(new Issue(name, 0, "", "bytes that are not UTF-8", "text in UTF-8",
                    "Save it again with the encoding \"Unicode (UTF-8)\"."));
        } catch (IOException unreadable) {
            log.add(new Issue(name, 0, "", "a file that cannot be opened", "a file that can be read",
                    "The system says: " + unreadable.getMessage()));
        }
        return Optional.empty();
    }

    /** What the missing name may have been, from the files beside it. */
    public static String neighbours(Path missing) {
        var folder = Optional.ofNullable(missing.getParent()).orElse(Path.of(""));
        if (missing.getFileName() == null || !Files.isDirectory(folder)) {
            return "There is no folder " + folder + ".";
        }
        try (var files = Files.list(folder)) {
            List<String> names = files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()).sorted().toList();
            return Nearest.advice(missing.getFileName().toString(), names);
        } catch (IOException unreadable) {
            return "";
        }
    }
}
