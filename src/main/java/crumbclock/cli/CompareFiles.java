package crumbclock.cli;

import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Planned;
import crumbclock.formats.compare.CompareJson;
import crumbclock.formats.csv.CompareCsv;
import crumbclock.report.compare.ComparePage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The files of a comparison: its own in one folder, each plan's in a folder of its own below. */
final class CompareFiles {

    private CompareFiles() {
    }

    /**
     * Renders everything before the first byte is written.
     *
     * @throws BadInput when a folder cannot be written
     */
    static void write(Path folder, Comparison comparison) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Planned planned : comparison.plans()) {
            PlanFiles.texts(planned.problem(), planned.plan())
                    .forEach((name, text) -> texts.put(planned.name() + "/" + name, text));
        }
        texts.put("compare.csv", CompareCsv.write(comparison));
        texts.put("compare.json", CompareJson.write(comparison));
        texts.put("compare.html", ComparePage.render(comparison));
        List<String> before = PlanFolders.of(folder.resolve("compare.json"));
        PlanFiles.write(folder, texts);
        PlanFolders.removeOthers(folder, before, texts.keySet());
    }
}
