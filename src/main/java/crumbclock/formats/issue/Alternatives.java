package crumbclock.formats.issue;

import java.util.List;

/** Several words of which one is meant. */
public final class Alternatives {

    private Alternatives() {
    }

    /** {@code x}, {@code x or y}, {@code x, y or z}; at least one word. */
    public static String of(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
