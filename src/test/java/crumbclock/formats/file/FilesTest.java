package crumbclock.formats.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesTest {

    @TempDir
    private Path folder;

    @Test
    void should_write_a_file_whole_and_leave_nothing_else() throws IOException {
        // when
        WholeFile.write(folder.resolve("new/plan.json"), "ü\n");
        WholeFile.write(folder.resolve("new/plan.json"), "v\n");

        // then
        assertThat(folder.resolve("new/plan.json")).hasContent("v\n");
        try (var files = Files.list(folder.resolve("new"))) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void should_leave_nothing_behind_when_the_target_is_a_folder() throws IOException {
        Files.createDirectories(folder.resolve("taken/inner"));

        assertThatThrownBy(() -> WholeFile.write(folder.resolve("taken"), "x")).isInstanceOf(IOException.class);
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void should_read_text_without_its_byte_order_mark() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "\uFEFForder\n");

        assertThat(SourceFile.read(folder.resolve("a.csv"), new IssueLog()).orElseThrow().text()).isEqualTo("order\n");
    }

    @Test
    void should_say_what_a_missing_file_may_have_been_called() throws IOException {
        Files.writeString(folder.resolve("orders.csv"), "");
        var log = new IssueLog();

        assertThat(SourceFile.read(folder.resolve("oders.csv"), log)).isEmpty();
        assertThat(log.sorted()).extracting(Issue::toString).containsExactly(folder.resolve("oders.csv")
                + ": read no such file; expected a file that can be read. Did you mean \"orders.csv\"?");
    }

    @Test
    void should_report_bytes_that_are_not_utf_8() throws IOException {
        Files.write(folder.resolve("a.csv"), new byte[] {'a', (byte) 0xE9, 'b'});
        var log = new IssueLog();

        assertThat(SourceFile.read(folder.resolve("a.csv"), log)).isEmpty();
        assertThat(log.sorted()).extracting(Issue::toString).containsExactly(folder.resolve("a.csv")
                + ": read bytes that are not UTF-8; expected text in UTF-8. Save it again with the encoding \"Unicode (UTF-8)\".");
    }

    @Test
    void should_write_files_that_others_may_read_as_any_new_file(@TempDir Path folder) throws IOException {
        // given
        Path plain = Files.writeString(folder.resolve("plain.txt"), "plain");
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "no permissions here");

        // when
        WholeFile.write(folder.resolve("whole.txt"), "whole");

        // then
        assertThat(Files.getPosixFilePermissions(folder.resolve("whole.txt"))).isEqualTo(Files.getPosixFilePermissions(plain));
    }
}
