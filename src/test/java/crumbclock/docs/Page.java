package crumbclock.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page of the documentation. A fenced block with a second word behind its language, as in <code>```json orders.json</code>,
 * stands for a file of that name.
 */
public record Page(String name, String text) {

    private static final Path FOLDER = Path.of("src", "site", "markdown");
    private static final Pattern FILE_BLOCK = Pattern.compile("^```[a-z]+ (\\S+)\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    public static Page of(String name) {
        return at(FOLDER.resolve(name));
    }

    public static Page at(Path file) {
        try {
            return new Page(file.getFileName().toString(), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All pages about file formats. */
    public static List<Page> formats() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.getFileName().toString().startsWith("formats")).sorted().map(Page::at).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether the word stands there as code. */
    public boolean names(String word) {
        return text.contains('`' + word + '`');
    }

    /** Files that stand in the page, by name. */
    public Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        var blocks = FILE_BLOCK.matcher(text);
        while (blocks.find()) {
            if (files.put(blocks.group(1), blocks.group(2)) != null) {
                throw new IllegalStateException(name + " has two files " + blocks.group(1));
            }
        }
        return files;
    }

    /** Writes the files of all pages about formats, and answers with their texts. */
    public static Map<String, String> writeFormatExamples(Path folder) throws IOException {
        Map<String, String> all = new LinkedHashMap<>();
        for (Page page : formats()) {
            for (var file : page.files().entrySet()) {
                if (all.put(file.getKey(), file.getValue()) != null) {
                    throw new IllegalStateException("two pages have a file " + file.getKey());
                }
                Files.writeString(folder.resolve(file.getKey()), file.getValue());
            }
        }
        return all;
    }
}
