package crumbclock.formats.day;

import crumbclock.domain.day.DayWord;
import crumbclock.formats.issue.Nearest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What was said of a step.
 *
 * @param minutes for slower
 * @param step    for redo from a step; empty when none is named
 */
record StepWords(DayWord word, int minutes, String step) {

    private static final Map<String, DayWord> PLAIN = Map.ofEntries(
            Map.entry("started", DayWord.STARTED), Map.entry("start", DayWord.STARTED), Map.entry("begun", DayWord.STARTED),
            Map.entry("done", DayWord.DONE), Map.entry("finished", DayWord.DONE), Map.entry("ready", DayWord.DONE),
            Map.entry("spoiled", DayWord.SPOILED), Map.entry("spoilt", DayWord.SPOILED), Map.entry("lost", DayWord.SPOILED),
            Map.entry("skip", DayWord.SKIP), Map.entry("skipped", DayWord.SKIP), Map.entry("redo", DayWord.REDO));
    private static final Pattern SLOWER = Pattern.compile("(?:slower|longer)(?: by)? (\\d{1,4})(?: ?min)?|(\\d{1,4})(?: ?min)? (?:slower|longer)");
    private static final Pattern REDO = Pattern.compile("redo (?:from )?(.+)");

    static Optional<StepWords> of(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        if (PLAIN.containsKey(plain)) {
            return Optional.of(new StepWords(PLAIN.get(plain), 0, ""));
        }
        var slower = SLOWER.matcher(plain);
        if (slower.matches()) {
            String minutes = slower.group(1) == null ? slower.group(2) : slower.group(1);
            return Optional.of(new StepWords(DayWord.SLOWER, Integer.parseInt(minutes), ""));
        }
        var redo = REDO.matcher(plain);
        return redo.matches() ? Optional.of(new StepWords(DayWord.REDO, 0, redo.group(1).strip())) : Optional.empty();
    }

    static String advice(String text) {
        String first = text.strip().split("\\s+")[0];
        return Nearest.advice(first, List.of("started", "done", "slower", "spoiled", "redo", "skip"));
    }
}
