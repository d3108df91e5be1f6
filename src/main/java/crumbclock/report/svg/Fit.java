package crumbclock.report.svg;

import java.util.ArrayList;
import java.util.List;

/** How much of a text fits into a width; widths are estimated, as no font is at hand, and rather too wide. */
final class Fit {

    private static final double EM_SHARE = 0.58;

    private Fit() {
    }

    static double width(String text, double fontSize) {
        return text.length() * fontSize * EM_SHARE;
    }

    /** The text, or its beginning with an ellipsis, or nothing when less than three letters would remain. */
    static String shorten(String text, double fontSize, double width) {
        if (width(text, fontSize) <= width) {
            return text;
        }
        int letters = (int) (width / (fontSize * EM_SHARE)) - 1;
        return letters < 3 ? "" : text.substring(0, letters).strip() + "…";
    }

    /** Words broken into lines of at most that width; no more than {@code most} lines, the last one shortened. */
    static List<String> lines(String text, double fontSize, double width, int most) {
        List<String> lines = new ArrayList<>();
        var words = new ArrayList<>(List.of(text.split(" ")));
        while (!words.isEmpty() && lines.size() < most) {
            var line = new StringBuilder(words.remove(0));
            while (!words.isEmpty() && width(line + " " + words.get(0), fontSize) <= width) {
                line.append(' ').append(words.remove(0));
            }
            if (lines.size() == most - 1 && !words.isEmpty()) {
                line.append(' ').append(String.join(" ", words));
            }
            String fits = shorten(line.toString(), fontSize, width);
            if (!fits.isEmpty()) {
                lines.add(fits);
            }
        }
        return lines;
    }
}
