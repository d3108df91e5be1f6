package crumbclock.cli;

import crumbclock.formats.issue.Alternatives;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: it can only tell how it is used. */
@Command(name = "crumbclock", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Turns a weekend's cake orders into one timetable and one fridge-loading plan.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:sound, and all orders on time", "1:planned, but an order is late or not possible",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; a plan found before that was written"},
        footer = {"", "Examples:", "  crumbclock check problems/my-weekend.json", "  crumbclock plan problems/my-weekend.json",
            "  crumbclock compare problems/my-weekend.json \"away oven from Thu 20:00\" \"drop A2\"",
            "  crumbclock promise problems/my-weekend.json \"copy A1 as A9\"",
            "  crumbclock paces problems/my-weekend.json --plan reports/my-weekend/plan.json --day day.csv"})
final class CrumbclockCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(),
                "Say what to do: " + Alternatives.of(List.copyOf(spec.subcommands().keySet())) + ".");
    }
}
