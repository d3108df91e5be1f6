package crumbclock.cli;

import crumbclock.app.promise.PlanInHand;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.formats.promise.PromiseJson;
import crumbclock.report.promise.PromisePage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The files of a promise: its own in one folder, each plan's in a folder of its own below. */
final class PromiseFiles {

    private PromiseFiles() {
    }

    /**
     * Renders everything before the first byte is written.
     *
     * @throws BadInput when a folder cannot be written
     */
    static void write(Path folder, PromiseAnswer answer, PlanInHand have) {
        Map<String, String> texts = new LinkedHashMap<>();
        PlanFiles.texts(answer.base(), answer.have(), have.state()).forEach((name, text) -> texts.put("known/" + name, text));
        answer.plans().forEach((folderName, promised) -> PlanFiles.texts(promised.problem(), promised.plan(), have.stateOf(promised))
                .forEach((name, text) -> texts.put(folderName + "/" + name, text)));
        texts.put("promise.json", PromiseJson.write(answer));
        texts.put("promise.html", PromisePage.render(answer));
        List<String> before = PlanFolders.of(folder.resolve("promise.json"));
        PlanFiles.write(folder, texts);
        PlanFolders.removeOthers(folder, before, texts.keySet());
    }
}
