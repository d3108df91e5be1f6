package crumbclock.bench.reference;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Table;
import crumbclock.bench.kitchen.MadeUpShop;
import crumbclock.bench.kitchen.ShopOptions;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.Weights;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Kitchens planned by Crumbclock and, simplified, by the exact solver: the same time, the same parts of the cost. */
@Command(name = "kitchens-exact", mixinStandardHelpOptions = true,
        description = "Kitchens beside an exact solver: lateness, W01, W02 and W07 of both, and what it proves.")
public final class KitchensBesideCommand implements Callable<Integer> {

    @Mixin
    private ShopOptions shops;

    @Option(names = "--seconds", defaultValue = "60", paramLabel = "N",
            description = "Seconds for each of the two (default: ${DEFAULT-VALUE}).")
    private int seconds;

    @Option(names = "--relaxed",
            description = "Work that may be put down needs no hands in the exact model: its bound then holds for all plans.")
    private boolean relaxed;

    @Mixin
    private RunOptions options;

    /**
     * Medium and soft points for lateness, W01, W02 and W07 only; total is soft + {@value KitchenModel#MEDIUM} × medium.
     *
     * @param sound whether the audit finds nothing in our plan
     */
    private record BesideRow(String kitchen, int steps, long seed, int limitSeconds, boolean relaxed, boolean sound,
            double ourLateness, double ourWishes, double ourTotal, String exactStatus, double exactLateness, double exactWishes,
            double exactTotal, double exactBound, double exactSeconds, Setting setting) {
    }

    @Override
    public Integer call() {
        List<BesideRow> rows = options.measure(shops.problems(options.seed()), this::measure);
        Table.write(options.stem("kitchens-exact"), "Kitchens beside an exact solver", rows);
        return 0;
    }

    private BesideRow measure(Path file) {
        Problem problem = onlyWhatBothKnow(MadeUpShop.read(file));
        AuditResult ours = Audit.audit(problem, PlanSearch.search(problem,
                SearchLimits.ofMillis(options.seed(), 1000L * seconds, Long.MAX_VALUE), SearchListener.SILENT).timetable());
        KitchenModel model = KitchenModel.of(problem, relaxed);
        Exact exact = Exact.solve(model.model(), seconds, options.seed());
        return new BesideRow(problem.title(), problem.steps().size(), options.seed(), seconds, relaxed, ours.isSound(),
                ours.mediumCost(), ours.softCost(), ours.softCost() + (double) KitchenModel.MEDIUM * ours.mediumCost(),
                exact.status(), exact.valueOf(model.lateness()), exact.valueOf(model.wishes()), exact.value(), exact.bound(),
                exact.seconds(), Setting.read());
    }

    /** No points for hours, calm, ovens, reach and what a kept plan says. */
    private static Problem onlyWhatBothKnow(Problem problem) {
        Weights all = problem.weights();
        Weights few = new Weights(all.lateMinute(), all.lateOrder(), all.notPossible(), all.bufferMinute(), all.staleMinute(),
                0, 0, 0, 0, 0, 0, 0, 0, 0, all.endMinute(), all.earlyBefore(), all.lateAfter(),
                0, 0);
        return problem.withWeights(few);
    }
}
