package crumbclock.cli;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.csv.FridgeCsv;
import crumbclock.formats.csv.TimetableCsv;
import crumbclock.formats.file.WholeFile;
import crumbclock.formats.plan.PlanJson;
import crumbclock.report.html.PlanPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The folder that a plan goes to. */
final class PlanFiles {

    private static final String PLAN = "plan.json";

    private final Path folder;

    private PlanFiles(Path folder) {
        this.folder = folder;
    }

    /**
     * Looks before a long search whether its plan could be written, and writes nothing yet.
     *
     * @param folder  as the user gave it; null for one named after the problem, below {@code reports}
     * @throws BadInput when the folder cannot be written
     */
    static PlanFiles in(Path folder, Path problemFile) {
        Path chosen = folder == null ? Path.of("reports", nameOf(problemFile)) : folder;
        Path there = chosen.toAbsolutePath().normalize();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (there == null || !Files.isDirectory(there)) {
            throw new BadInput("--out " + chosen + ": " + (there == null ? chosen : there)
                    + " is not a folder; name a folder that is there or can be made");
        }
        if (!Files.isWritable(there)) {
            throw new BadInput("--out " + chosen + ": " + there + " cannot be written; name another folder");
        }
        return new PlanFiles(chosen);
    }

    /** The folder of a plan with changes, or of a comparison, when the user names none. */
    static Path usual(Path problemFile, String more) {
        return Path.of("reports", nameOf(problemFile) + "-" + more);
    }

    private static String nameOf(Path problemFile) {
        String name = problemFile.toAbsolutePath().normalize().getFileName().toString();
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }

    Path page() {
        return folder.resolve("plan.html");
    }

    Path folder() {
        return folder;
    }

    /**
     * Renders everything before the first byte is written, so that a failing one leaves the old files alone.
     *
     * @throws BadInput when the folder cannot be written after all
     */
    void write(Problem problem, Plan plan) {
        write(folder, texts(problem, plan));
    }

    /**
     * The same for a plan made during the day, with what it changes.
     *
     * @return the text of its plan.json
     */
    String write(Problem problem, Plan plan, DayNews news, DayState state) {
        Map<String, String> texts = texts(problem, plan, PlanPage.render(problem, plan, news), state);
        write(folder, texts);
        return texts.get(PLAN);
    }

    /** The files of one plan: name and text. */
    static Map<String, String> texts(Problem problem, Plan plan) {
        return texts(problem, plan, PlanPage.render(problem, plan), DayState.NONE);
    }

    /** The same for one whose problem differs from the one in its file. */
    static Map<String, String> texts(Problem problem, Plan plan, DayState state) {
        return texts(problem, plan, PlanPage.render(problem, plan), state);
    }

    private static Map<String, String> texts(Problem problem, Plan plan, String page, DayState state) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(PLAN, PlanJson.write(problem, plan, state));
        texts.put("timetable.csv", TimetableCsv.write(problem, plan));
        texts.put("fridge.csv", FridgeCsv.write(problem, plan));
        texts.put("plan.html", page);
        return texts;
    }

    /** @throws BadInput when one of them cannot be written */
    static void write(Path folder, Map<String, String> texts) {
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Path file = folder.resolve(text.getKey());
            try {
                if (Files.isDirectory(file)) {
                    throw new IOException("it is a folder");
                }
                WholeFile.write(file, text.getValue());
            } catch (IOException e) {
                throw new BadInput(file + " cannot be written: " + e.getMessage());
            }
        }
    }
}
