package crumbclock.report.text;

import java.util.Locale;

/** People's texts as lines and columns of a terminal. */
public final class TerminalText {

    private TerminalText() {
    }

    /** One line without blanks at its end, whatever a file holds: a title must not move the cursor or colour the screen. */
    public static String line(String text) {
        return plain(text).stripTrailing();
    }

    /** The text with a blank for control characters. */
    static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }

    /** A cell of a column, filled up with blanks; one that is too long is cut, and a blank is left before the next. */
    public static String padded(String text, int width) {
        String fits = text.length() >= width ? text.substring(0, width - 2) + "…" : text;
        return String.format(Locale.ROOT, "%-" + width + "s", fits);
    }
}
