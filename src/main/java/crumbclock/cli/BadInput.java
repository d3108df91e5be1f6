package crumbclock.cli;

import java.util.List;

/** What the user gave cannot be used; each line says one fault. */
final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<String> lines;

    BadInput(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    BadInput(String line) {
        this(List.of(line));
    }

    List<String> lines() {
        return lines;
    }
}
