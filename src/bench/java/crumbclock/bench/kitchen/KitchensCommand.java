package crumbclock.bench.kitchen;

import crumbclock.bench.RunOptions;
import crumbclock.bench.Setting;
import crumbclock.bench.Stopwatch;
import crumbclock.bench.Table;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.rules.Audit;
import crumbclock.rules.AuditResult;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchResult;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans kitchens for a given time: shipped problems, or made-up shops by their number of cakes. */
@Command(name = "kitchens", mixinStandardHelpOptions = true,
        description = "Shipped problems and made-up shops: time to the first plan, cost, memory, decodes.")
public final class KitchensCommand implements Callable<Integer> {

    @Mixin
    private ShopOptions shops;

    @Option(names = "--seconds", defaultValue = "30", paramLabel = "N",
            description = "Search time for each (default: ${DEFAULT-VALUE}).")
    private int seconds;

    @Mixin
    private RunOptions options;

    private final HeapWatch heap = new HeapWatch();

    /**
     * @param firstPlanSeconds until all orders were placed
     * @param onTimeSeconds    until none was late
     * @param lateness         medium points of the best plan
     * @param wishes           soft points of the best plan
     * @param usedHeapMib      the most in use after a garbage collection
     */
    private record KitchenRow(String kitchen, long seed, int orders, int steps, int people, int horizonMinutes, int limitSeconds,
            double readSeconds, double compileSeconds, double firstPlanSeconds, double onTimeSeconds, long lateness, long wishes,
            long lateOrders, long notPossible, long schedules, double searchSeconds, double auditSeconds, long usedHeapMib,
            Setting setting) {
    }

    @Override
    public Integer call() {
        List<KitchenRow> rows = options.measure(shops.problems(options.seed()), this::measure);
        Table.write(options.stem("kitchens"), "Kitchens", rows);
        return 0;
    }

    private KitchenRow measure(Path file) {
        heap.restart();
        Stopwatch reading = new Stopwatch();
        Problem problem = MadeUpShop.read(file);
        double readSeconds = reading.wallSeconds();
        Stopwatch compiling = new Stopwatch();
        CompiledProblem.of(problem, false);
        double compileSeconds = compiling.wallSeconds();
        FirstPlan first = new FirstPlan(problem);
        Stopwatch searching = new Stopwatch();
        SearchResult result = PlanSearch.search(problem,
                SearchLimits.ofMillis(options.seed(), 1000L * seconds, Long.MAX_VALUE), first);
        double searchSeconds = searching.wallSeconds();
        long usedHeap = heap.mostMib();
        Stopwatch auditing = new Stopwatch();
        AuditResult audit = Audit.audit(problem, result.timetable());
        double auditSeconds = auditing.wallSeconds();
        if (!audit.isSound() || audit.mediumCost() != result.cost().medium() || audit.softCost() != result.cost().soft()) {
            System.err.println(file + ": the audit disagrees: " + audit.findings().stream().limit(3).toList());
        }
        List<Outcome> outcomes = result.timetable().outcomes();
        return new KitchenRow(problem.title(), options.seed(), problem.orders().size(), problem.steps().size(),
                problem.kitchen().people().size(), problem.clock().horizonMinutes(), seconds, readSeconds, compileSeconds, first.seconds(),
                first.secondsToOnTime(), audit.mediumCost(), audit.softCost(),
                outcomes.stream().filter(outcome -> outcome.lateMinutes() > 0).count(),
                outcomes.stream().filter(outcome -> !outcome.possible()).count(), result.schedules(), searchSeconds, auditSeconds,
                usedHeap, Setting.read());
    }
}
