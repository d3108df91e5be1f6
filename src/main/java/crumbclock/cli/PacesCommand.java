package crumbclock.cli;

import crumbclock.app.pace.LearnPaces;
import crumbclock.domain.pace.PaceReport;
import crumbclock.formats.csv.PacesCsv;
import crumbclock.formats.pace.KitchenPaces;
import crumbclock.formats.pace.PacesJson;
import crumbclock.report.pace.PacesPage;
import crumbclock.report.pace.PacesSummary;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns from finished days how long work really takes, and writes it into the kitchen file when told to. */
@Command(name = "paces", mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Sets real minutes of finished days beside the figures in use: for each person and kind of work, and for each kind of step.",
            "Name --plan and --day once for each finished day or weekend; the first --day belongs to the first --plan, and so on.",
            "Writes paces.html, paces.csv and paces.json. The kitchen file is changed only with --adopt."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:told what was seen, also when it is too little to say something",
            "2:bad input or options; nothing was written", "3:fault: the program failed"})
final class PacesCommand implements Callable<Integer> {

    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PROBLEM", arity = "1..*",
            description = "Problem file (JSON) that the plans were made of: one for all of them, or one for each. The first one's kitchen is meant.")
    private List<Path> problemFiles;

    @Mixin
    private ChangeOption change;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "The plan.json that people worked by.")
    private List<Path> planFiles = new ArrayList<>();

    @Option(names = "--day", required = true, paramLabel = "FILE",
            description = "What happened, with the times at which steps were started and done (see formats-day.md).")
    private List<Path> dayFiles = new ArrayList<>();

    @Option(names = "--adopt", description = "Write the paces seen into the kitchen file, where they differ enough from those in use.")
    private boolean adopt;

    @Option(names = "--out", paramLabel = "DIR",
            description = "Folder to write to; otherwise reports/ and the problem's name with -paces.")
    private Path out;

    @Option(names = "--quiet", description = "No tables; faults, and figures changed with --adopt, are still told.")
    private boolean quiet;

    PacesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        checkPairs();
        PacesInputs inputs = PacesInputs.read(problemFiles, change.changes(), planFiles, dayFiles);
        PaceReport report = LearnPaces.learn(inputs.kitchen(), inputs.days());
        KitchenPaces kitchen = inputs.file();
        KitchenPaces.Edited edited = kitchen.with(report.learned());
        if (adopt && !edited.changes().isEmpty() && !Files.isWritable(kitchen.file())) {
            throw new BadInput(kitchen.file() + ": read a file that cannot be written; expected the kitchen file to be writable for --adopt."
                    + " Change its permissions, or leave --adopt out and write the figures yourself.");
        }
        Path folder = PlanFiles.in(out == null ? PlanFiles.usual(problemFiles.get(0), "paces") : out, problemFiles.get(0)).folder();
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("paces.csv", PacesCsv.write(report));
        texts.put("paces.json", PacesJson.write(report));
        texts.put("paces.html", PacesPage.render(report));
        PlanFiles.write(folder, texts);
        if (!quiet) {
            surroundings.out().print(PacesSummary.render(report));
            inputs.notes().forEach(note -> surroundings.out().println("  " + note));
            surroundings.out().println();
            surroundings.out().println("Look at " + folder.resolve("paces.html") + "; tables are beside it.");
        }
        tell(report, inputs, edited);
        return Exit.ON_TIME.code();
    }

    private void checkPairs() {
        if (planFiles.size() != dayFiles.size()) {
            throw new ParameterException(spec.commandLine(), "--plan, --day: read " + counted(planFiles.size(), "plan") + " and "
                    + counted(dayFiles.size(), "day file") + "; expected a --day for each --plan, in the same order");
        }
        if (problemFiles.size() != 1 && problemFiles.size() != planFiles.size()) {
            throw new ParameterException(spec.commandLine(), "PROBLEM: read " + counted(problemFiles.size(), "problem file") + " and "
                    + counted(planFiles.size(), "plan") + "; expected one problem file for all plans, or one for each, in the same order");
        }
        Set<Path> seen = new HashSet<>();
        for (Path day : dayFiles) {
            if (!seen.add(day.toAbsolutePath().normalize())) {
                throw new ParameterException(spec.commandLine(), "--day: read " + day + " twice; expected each day file once, or it counts twice");
            }
        }
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private void tell(PaceReport report, PacesInputs inputs, KitchenPaces.Edited edited) {
        Path file = inputs.file().file();
        List<String> lines = edited.changes().stream().map(changed -> "  " + name(inputs, changed.personId()) + ", " + changed.workKind() + ": "
                + changed.before().map(BigDecimal::toPlainString).orElse("1 (not named before)") + " → " + changed.after().toPlainString()).toList();
        report.learned().keySet().stream().filter(id -> edited.changes().stream().noneMatch(changed -> changed.personId().equals(id)))
                .forEach(id -> surroundings.out().println(id + " comes in with --change and does not stand in " + file + "; no figure to write."));
        if (edited.changes().isEmpty()) {
            surroundings.out().println(file + " stays as it is: no pace was seen often enough and differs enough from the one in use.");
            return;
        }
        if (adopt) {
            try {
                inputs.file().write(edited);
            } catch (IOException e) {
                throw new BadInput(file + " cannot be written and stays as it was: " + e.getMessage()
                        + ". Free space or change permissions, and try again.");
            }
        }
        if (adopt || !quiet) {
            surroundings.out().println(adopt ? file + " was changed:" : file + " stays as it is. With --adopt it would change:");
            lines.forEach(surroundings.out()::println);
        }
    }

    private static String name(PacesInputs inputs, String personId) {
        return inputs.kitchen().people().stream().filter(person -> person.id().equals(personId)).map(person -> person.name()).findFirst()
                .orElse(personId);
    }
}
