package crumbclock.cli;

import crumbclock.app.PlanSideBySide;
import crumbclock.app.PlanSideBySide.Job;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.plan.Plan;
import crumbclock.formats.change.Scenario;
import crumbclock.report.compare.CompareSummary;
import crumbclock.report.compare.ComparisonTable;
import crumbclock.search.SearchLimits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a problem as it is and with changes, and sets the plans beside each other. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false,
        description = {"Plans a problem as it is and with each change, and writes one table: compare.html, compare.csv, compare.json,",
            "and each plan into a folder of its own. All searches have the same limits and seed;",
            "without --seconds and --steps each ends after " + CompareCommand.DEFAULT_STEPS + " steps.",
            "A CHANGE is a file of changes, or words such as \"move A2 to Sat 09:00\"; with \";\" between them several apply together.",
            "Ctrl-C ends it early and keeps what there is."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:all plans sound, and all orders on time", "1:in a plan an order is late or not possible",
            "2:bad input or options; nothing was written", "3:fault: the audit found a broken rule, or the program failed",
            "130:ended with Ctrl-C; plans found before that were written"})
final class CompareCommand implements Callable<Integer> {

    static final long DEFAULT_STEPS = 5_000;
    private static final int MOST_SEEDS = 20;
    private static final int THREADS_OF_A_SEARCH = 2;
    private static final String BASE = "base";

    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "PROBLEM", description = "Problem file (JSON).")
    private Path problemFile;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "CHANGE", description = "What differs: a file of changes, or words.")
    private List<String> changes;

    @Option(names = "--out", paramLabel = "DIR",
            description = "Folder to write to; otherwise reports/ and the problem's name with -compared.")
    private Path out;

    @Mixin
    private SearchOptions search;

    @Option(names = "--seeds", paramLabel = "N", defaultValue = "3",
            description = "Plan the base with N seeds, to know what chance alone changes (default: ${DEFAULT-VALUE}; 1: do not measure it).")
    private int seeds;

    CompareCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        checkOptions();
        List<Scenario> scenarios = Inputs.scenarios(problemFile, changes);
        Path folder = PlanFiles.in(out == null ? PlanFiles.usual(problemFile, "compared") : out, problemFile).folder();
        surroundings.interrupt().watch();
        Comparison comparison = comparison(scenarios);
        CompareFiles.write(folder, comparison);
        if (!search.quiet()) {
            surroundings.out().print(CompareSummary.render(comparison));
            surroundings.out().println();
            surroundings.out().println("Look at " + folder.resolve("compare.html") + "; each plan is in a folder beside it.");
        }
        return comparison.plans().stream().mapToInt(planned -> Exit.of(planned.plan()).code()).max().orElseThrow();
    }

    private void checkOptions() {
        search.check(spec);
        if (seeds < 1 || seeds > MOST_SEEDS) {
            throw new ParameterException(spec.commandLine(), "--seeds: read " + seeds + "; expected 1 to " + MOST_SEEDS);
        }
    }

    private SearchLimits limits(long ofSeed) {
        return search.isOpen() ? SearchLimits.ofSteps(ofSeed, DEFAULT_STEPS) : search.limits(ofSeed);
    }

    /** The base comes first, then the changes, then the base with other seeds: when ended early, plans count for more than chance. */
    private Comparison comparison(List<Scenario> scenarios) {
        List<String> names = names(scenarios);
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < scenarios.size(); i++) {
            jobs.add(new Job(names.get(i), scenarios.get(i).problem(), limits(search.seed())));
        }
        for (int more = 1; more < seeds; more++) {
            long other = search.seed() + more;
            jobs.add(new Job(BASE + " with seed " + other, scenarios.get(0).problem(), limits(other)));
        }
        int atOnce = Math.max(1, Runtime.getRuntime().availableProcessors() / THREADS_OF_A_SEARCH);
        List<Optional<Plan>> plans;
        try (var progress = new SideBySideProgress(surroundings, search.quiet(), jobs.size())) {
            plans = PlanSideBySide.plan(jobs, atOnce, progress);
        }
        List<Planned> planned = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int i = 0; i < scenarios.size(); i++) {
            var scenario = scenarios.get(i);
            String name = names.get(i);
            String title = i == 0 ? "As it is" : scenario.title();
            plans.get(i).ifPresentOrElse(plan -> planned.add(new Planned(name, title, scenario.problem(), plan)), () -> left.add(title));
        }
        var chances = plans.subList(scenarios.size(), plans.size()).stream().flatMap(Optional::stream).collect(Collectors.toList());
        return ComparisonTable.of(planned, chances, left);
    }

    /** Names of folders, each once. */
    private static List<String> names(List<Scenario> scenarios) {
        Set<String> taken = new HashSet<>(Set.of(BASE));
        List<String> names = new ArrayList<>(List.of(BASE));
        for (Scenario scenario : scenarios.subList(1, scenarios.size())) {
            String name = scenario.name();
            for (int more = 2; !taken.add(name); more++) {
                name = scenario.name() + "-" + more;
            }
            names.add(name);
        }
        return names;
    }
}
