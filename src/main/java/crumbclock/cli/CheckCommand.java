package crumbclock.cli;

import crumbclock.domain.problem.Problem;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads a problem and everything it names, and plans nothing. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Reads a problem with all its files and tells every fault at once.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all well", "2:bad input or options", "3:the program failed"})
final class CheckCommand implements Callable<Integer> {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "PROBLEM", description = "Problem file (JSON).")
    private Path problemFile;

    @Mixin
    private ChangeOption change;

    CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Problem problem = Inputs.changed(problemFile, change.changes()).problem();
        surroundings.out().println(problemFile + ": all well. " + count(problem.orders().size(), "order") + ", "
                + count(problem.cakes().size(), "cake") + ", " + count(problem.batches().size(), "batch") + ", "
                + count(problem.steps().size(), "step") + "; "
                + (problem.kitchen().people().size() == 1 ? "1 person" : problem.kitchen().people().size() + " people") + ", "
                + count(problem.kitchen().cavities().size(), "oven") + ", "
                + count(problem.kitchen().stores().size(), "store") + ".");
        return Exit.ON_TIME.code();
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : what.endsWith("ch") ? "es" : "s");
    }
}
