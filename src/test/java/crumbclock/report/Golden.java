package crumbclock.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Texts kept beside the tests; {@code mvn test -Dgolden=write} writes them anew, to be read in the diff. */
public final class Golden {

    private static final Path DIRECTORY = Path.of("src", "test", "resources", "crumbclock", "report");

    private Golden() {
    }

    public static void assertSame(String fileName, String text) {
        var file = DIRECTORY.resolve(fileName);
        try {
            if ("write".equals(System.getProperty("golden"))) {
                Files.createDirectories(DIRECTORY);
                Files.writeString(file, text);
            }
            assertThat(text).as(fileName).isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
