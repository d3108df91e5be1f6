package crumbclock.formats.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files whole or not at all: a reader meets the old text or the new one, never a torn one. */
public final class WholeFile {

    private WholeFile() {
    }

    /**
     * Writes UTF-8 text, replacing what was there; missing folders are made.
     *
     * @throws IOException when the folder or the file cannot be written; the old file is then untouched
     */
    public static void write(Path path, String text) throws IOException {
        var whole = path.toAbsolutePath();
        var folder = whole.getParent();
        if (folder == null) {
            throw new IOException(path + " is no file name");
        }
        Files.createDirectories(folder);
        // beside the target, because only a move within one file system is atomic
        var temporary = folder.resolve("." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            // a new file with everyday permissions; one made as a temporary file could be read by its owner alone
            Files.write(temporary, text.getBytes(StandardCharsets.UTF_8));
            try {
                Files.move(temporary, whole, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException plainFolder) {
                Files.move(temporary, whole, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(temporary);
        }
    }
}
