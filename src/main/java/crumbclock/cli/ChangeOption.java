package crumbclock.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** The changes that a command works with. */
final class ChangeOption {

    @Option(names = "--change", paramLabel = "CHANGE",
            description = {"A change of the problem: a file of changes, or words such as \"away oven from Thu 20:00\".",
                "As often as you like; they apply in their order."})
    private List<String> changes = new ArrayList<>();

    List<String> changes() {
        return List.copyOf(changes);
    }
}
