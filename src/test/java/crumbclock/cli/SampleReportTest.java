package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The kept sample is what the README's first command writes, byte for byte. After a change that is meant to change
 * plans, run that command again and keep what it writes.
 */
class SampleReportTest {

    private static final Path SAMPLE = Path.of("reports/five-due-saturday");

    @Test
    void should_remake_the_kept_sample_byte_for_byte(@TempDir Path folder) throws IOException {
        // when
        var run = CommandRun.of("plan", "problems/five-due-saturday.json", "--steps", "20000", "--out", folder);

        // then
        assertThat(run.code()).isZero();
        for (String file : new String[] {"plan.json", "timetable.csv", "fridge.csv", "plan.html"}) {
            assertThat(Files.readString(folder.resolve(file))).as("%s, kept in %s", file, SAMPLE)
                    .isEqualTo(Files.readString(SAMPLE.resolve(file)));
        }
        String readme = Files.readString(Path.of("README.md"));
        assertThat(readme).contains("plan problems/five-due-saturday.json --steps 20000");
        // the README's cut of the summary is from this very run
        int order = run.out().indexOf("order  ");
        assertThat(readme).contains(run.out().substring(order, run.out().indexOf("A4  ")));
    }
}
