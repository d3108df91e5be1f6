package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Starts the built jar as a user does. */
@Timeout(120)
class ProgramIT {

    private static final Path JAR = Path.of("target", "crumbclock.jar").toAbsolutePath();

    @TempDir
    private Path folder;

    @Test
    void helpAndVersionAreThere() throws Exception {
        assertThat(run("--help")).matches(run -> run.code() == 0 && run.err().isEmpty())
                .extracting(CommandRun::out).asString().startsWith("Usage: crumbclock");
        assertThat(run("--version").out()).matches("crumbclock \\d+\\.\\d+\\.\\d+.*\\R");
    }

    @Test
    void problemIsChecked() throws Exception {
        var run = run("check", SmallProblem.in(folder).toString());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains(": all well. ");
        assertThat(run("check", SmallProblem.withMistakesIn(folder).toString()).code()).isEqualTo(2);
    }

    @Test
    void planIsWrittenBelowReportsAndAuditedAgain() throws Exception {
        // when
        var run = run("plan", SmallProblem.in(folder).toString(), "--steps", "5");

        // then
        assertThat(run.err().lines()).allMatch(line -> line.startsWith("planning, "));
        assertThat(run.code()).isZero();
        Path out = folder.resolve("reports/two-dozen");
        assertThat(List.of("plan.html", "plan.json", "timetable.csv", "fridge.csv"))
                .allSatisfy(name -> assertThat(out.resolve(name)).isNotEmptyFile());
        var audit = run("audit", "two-dozen.json", out.resolve("plan.json").toString());
        assertThat(audit.code()).as(audit.out() + audit.err()).isZero();
    }

    /** As Ctrl-C does: the process is asked to end, and the files are there before it has. */
    @Test
    void searchThatIsInterruptedStillWritesItsPlan() throws Exception {
        // given
        Process process = start("plan", SmallProblem.in(folder).toString(), "--seconds", "86400", "--out", "out");
        try (var err = process.errorReader(StandardCharsets.UTF_8)) {
            String line = err.readLine();
            assertThat(line).startsWith("planning, ");

            // when
            process.destroy();

            // then
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(folder.resolve("out/plan.html")).isNotEmptyFile();
        assertThat(Files.readString(folder.resolve("stdout"), StandardCharsets.UTF_8)).contains("Look at out");
    }

    @Test
    void jarHoldsLicenceAndSchemas() throws IOException {
        Set<String> names = new TreeSet<>();
        try (var jar = new JarFile(JAR.toFile())) {
            jar.stream().forEach(entry -> names.add(entry.getName()));
            var licence = jar.getEntry("META-INF/LICENSE");
            assertThat(licence).as("META-INF/LICENSE").isNotNull();
            assertThat(new String(jar.getInputStream(licence).readAllBytes(), StandardCharsets.UTF_8))
                    .contains("Apache License", "Version 2.0, January 2004");
        }
        for (String kind : List.of("problem", "kitchen", "orders", "method", "plan", "common")) {
            assertThat(names).contains("crumbclock/schema/" + kind + ".schema.json");
        }
    }

    private CommandRun run(String... args) throws Exception {
        Process process = start(args);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        return new CommandRun(code, Files.readString(folder.resolve("stdout"), StandardCharsets.UTF_8), err);
    }

    private Process start(String... args) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar", JAR.toString()));
        command.addAll(List.of(args));
        return new ProcessBuilder(command).directory(folder.toFile()).redirectOutput(folder.resolve("stdout").toFile()).start();
    }
}
