package crumbclock.formats;

import crumbclock.domain.problem.Problem;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The example problem, copied into a folder of the test's own, where the test can spoil it. */
public final class TestProblem {

    public static final List<String> FILES = List.of("problem.json", "kitchen.json", "orders.csv", "orders.json");

    private final Path folder;

    public TestProblem(Path folder) throws IOException {
        this.folder = folder;
        for (String name : FILES) {
            Files.writeString(folder.resolve(name), example(name));
        }
    }

    static String example(String name) throws IOException {
        try (var stream = TestProblem.class.getResourceAsStream("/crumbclock/formats/example/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Puts other words into one of the files; fails when the words to replace are not there. */
    public TestProblem with(String name, String old, String replacement) throws IOException {
        String text = Files.readString(folder.resolve(name));
        if (!text.contains(old)) {
            throw new IllegalArgumentException(name + " does not hold " + old);
        }
        Files.writeString(folder.resolve(name), text.replace(old, replacement));
        return this;
    }

    public TestProblem whole(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return this;
    }

    Optional<Problem> read(IssueLog log) {
        return ProblemReader.read(folder.resolve("problem.json"), log);
    }

    Problem problem() {
        var log = new IssueLog();
        return read(log).orElseThrow(() -> new AssertionError(log.sorted()));
    }

    /** The issues as text, without the folder's name. */
    List<String> issues() {
        var log = new IssueLog();
        var problem = read(log);
        if (problem.isPresent() != log.isEmpty()) {
            throw new AssertionError("a problem and issues at once, or neither: " + log.sorted());
        }
        return log.sorted().stream().map(Issue::toString).map(text -> text.replace(folder + "/", "")).toList();
    }
}
