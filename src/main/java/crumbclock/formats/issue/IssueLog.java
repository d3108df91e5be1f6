package crumbclock.formats.issue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects issues while files are read; nothing is planned when it holds any. */
public final class IssueLog {

    private final Set<Issue> issues = new LinkedHashSet<>();

    /** Adds an issue; one that is there already, word for word, is not repeated. */
    public void add(Issue issue) {
        issues.add(issue);
    }

    /** Whether something is wrong at this place already. */
    public boolean holdsAt(String file, String where) {
        return issues.stream().anyMatch(issue -> issue.file().equals(file) && issue.where().equals(where));
    }

    /** Whether something is wrong at this place of a JSON file, or at a value inside it. */
    public boolean holdsWithin(String file, String pointer) {
        return issues.stream().anyMatch(issue -> issue.file().equals(file)
                && (issue.where().equals(pointer) || issue.where().startsWith(pointer + "/")));
    }

    public boolean isEmpty() {
        return issues.isEmpty();
    }

    /** All issues by file, line and place; issues at one place stay in the order of their discovery. */
    public List<Issue> sorted() {
        return issues.stream().sorted().toList();
    }
}
