package crumbclock.cli;

import crumbclock.formats.csv.HistoryCsv;
import crumbclock.formats.csv.HistoryCsv.Entry;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.file.WholeFile;
import crumbclock.formats.issue.IssueLog;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Every plan that people ever had, with its time and reason: a folder {@code history} beside the plan that holds the history of the
 * plan before, and one more. It appears whole or not at all.
 */
final class PlanHistory {

    private static final String FOLDER = "history";
    private static final String INDEX = "index.csv";

    private final Map<String, String> texts = new LinkedHashMap<>();
    private final List<Entry> entries = new ArrayList<>();

    private PlanHistory() {
    }

    /**
     * Reads what is known of the plan before, and of those before it.
     *
     * @throws BadInput when an older plan's history cannot be read
     */
    static PlanHistory of(Path planFile) {
        var history = new PlanHistory();
        Path parent = planFile.toAbsolutePath().normalize().getParent();
        Path index = parent.resolve(FOLDER).resolve(INDEX);
        try {
            if (Files.isRegularFile(index)) {
                var log = new IssueLog();
                List<Entry> known = SourceFile.read(index, log).map(source -> HistoryCsv.read(source, log)).orElse(List.of());
                if (!log.isEmpty()) {
                    throw new BadInput(log.sorted().stream().map(Object::toString).toList());
                }
                for (Entry entry : known) {
                    history.add(entry, Files.readString(parent.resolve(FOLDER).resolve(entry.folder()).resolve("plan.json")));
                }
            } else {
                history.add("", "the plan before", Files.readString(planFile));
            }
        } catch (IOException unreadable) {
            throw new BadInput(parent.resolve(FOLDER) + " cannot be read: " + unreadable.getMessage());
        }
        return history;
    }

    private void add(Entry entry, String plan) {
        entries.add(entry);
        texts.put(entry.folder(), plan);
    }

    /** One more plan. */
    void add(String time, String reason, String plan) {
        int number = entries.size() + 1;
        String name = String.format(Locale.ROOT, "%03d", number) + (time.isEmpty() ? "" : "-" + time.replaceAll("[^0-9A-Za-z]+", "-"));
        add(new Entry(number, time, reason, name), plan);
    }

    /** @throws BadInput when the folder cannot be written */
    void write(Path folder) {
        Path whole = folder.resolve(FOLDER);
        Path part = folder.resolve("." + FOLDER + ".part");
        try {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                WholeFile.write(part.resolve(text.getKey()).resolve("plan.json"), text.getValue());
            }
            Files.write(part.resolve(INDEX), HistoryCsv.write(entries).getBytes(StandardCharsets.UTF_8));
            Files.move(part, whole);
        } catch (IOException e) {
            throw new BadInput(whole + " cannot be written: " + e.getMessage());
        }
    }
}
