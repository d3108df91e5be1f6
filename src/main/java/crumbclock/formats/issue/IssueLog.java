package crumbclock.formats.issue;

import java.util.ArrayList;
import java.util.List;

/** Collects issues while files are read; nothing is planned when it holds any. */
public final class IssueLog {

    private final List<Issue> issues = new ArrayList<>();

    public void add(Issue issue) {
        issues.add(issue);
    }

    public boolean isEmpty() {
        return issues.isEmpty();
    }

    /** All issues by file, line and place; issues at one place stay in the order of their discovery. */
    public List<Issue> sorted() {
        return issues.stream().sorted().toList();
    }
}
