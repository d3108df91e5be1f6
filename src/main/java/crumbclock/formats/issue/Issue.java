package crumbclock.formats.issue;

/**
 * One fault of the input.
 *
 * @param file     name as the user gave it
 * @param line     1-based, 0 when unknown
 * @param where    column of a table or path inside a JSON file; empty for the whole file
 * @param read     what stands there, shortened to a line
 * @param expected what would be right
 * @param advice   what to try; may be empty
 */
public record Issue(String file, int line, String where, String read, String expected, String advice)
        implements Comparable<Issue> {

    /** {@code orders.csv, line 12, column hand_over: read "25:10"; expected a time such as 14:30 or 2:30 pm. Try ...} */
    @Override
    public String toString() {
        var text = new StringBuilder(file);
        if (line > 0) {
            text.append(", line ").append(line);
        }
        if (!where.isEmpty()) {
            text.append(", ").append(where);
        }
        text.append(": read ").append(read).append("; expected ").append(expected).append('.');
        if (!advice.isEmpty()) {
            text.append(' ').append(advice);
        }
        return text.toString();
    }

    @Override
    public int compareTo(Issue other) {
        int byFile = file.compareTo(other.file);
        if (byFile != 0) {
            return byFile;
        }
        return line != other.line ? Integer.compare(line, other.line) : where.compareTo(other.where);
    }
}
