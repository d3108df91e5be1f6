package crumbclock.cli;

import crumbclock.formats.json.FolderNames;
import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Folders of plans that an earlier run wrote beside its page. A plan that no page leads to any more is taken away; whatever else lies
 * there stays.
 */
final class PlanFolders {

    private static final List<String> FILES = List.of("plan.json", "timetable.csv", "fridge.csv", "plan.html");

    private PlanFolders() {
    }

    /**
     * What the page of an earlier run led to.
     *
     * @param index the JSON file beside the page
     */
    static List<String> of(Path index) {
        try {
            return Files.isRegularFile(index) ? FolderNames.of(Files.readString(index)) : List.of();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /**
     * Takes away plans of an earlier run, and their folders when nothing else is in them.
     *
     * @param written what was written now: folder/file
     * @throws BadInput when one of them cannot be taken away
     */
    static void removeOthers(Path folder, Collection<String> before, Set<String> written) {
        for (String name : before) {
            if (written.stream().noneMatch(file -> file.startsWith(name + "/"))) {
                remove(folder.resolve(name));
            }
        }
    }

    private static void remove(Path plan) {
        try {
            for (String file : FILES) {
                Files.deleteIfExists(plan.resolve(file));
            }
            Files.deleteIfExists(plan);
        } catch (DirectoryNotEmptyException other) {
            // somebody keeps something there
        } catch (IOException e) {
            throw new BadInput(plan + " is of an earlier run and cannot be taken away: " + e.getMessage());
        }
    }
}
