package crumbclock.formats;

import crumbclock.domain.problem.Problem;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.KitchenFile;
import crumbclock.formats.kitchen.KitchenReader;
import crumbclock.formats.order.Names;
import crumbclock.formats.order.OrdersReader;
import crumbclock.formats.plan.FixedSteps;
import crumbclock.formats.problem.AllergenCheck;
import crumbclock.formats.problem.BatchReader;
import crumbclock.formats.problem.ClockReader;
import crumbclock.formats.problem.ExpansionWords;
import crumbclock.formats.problem.MethodBook;
import crumbclock.formats.problem.NamedFiles;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.formats.problem.ProblemFile;
import crumbclock.formats.problem.WeightsReader;
import crumbclock.methods.ExpansionFault;
import crumbclock.methods.MethodKind;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a problem file, the kitchen, methods and orders that it names, and turns them into steps. */
public final class ProblemReader {

    private final IssueLog log;
    private final ProblemFile file;
    private final Spot root;
    private final List<Path> moreOrders;
    private final ProblemCalendar calendar;

    private ProblemReader(Loaded<ProblemFile> loaded, List<Path> moreOrders, IssueLog log) {
        this.log = log;
        this.moreOrders = List.copyOf(moreOrders);
        this.file = loaded.value();
        this.root = loaded.spot();
        this.calendar = new ClockReader(log).read(root, file);
    }

    /**
     * Reads a problem file and everything it names; all faults of all files are told at once.
     *
     * @return empty when the log holds an issue
     */
    public static Optional<Problem> read(Path problemFile, IssueLog log) {
        return read(problemFile, List.of(), log);
    }

    /**
     * The same with more orders than the problem file names, such as one that came in late.
     *
     * @param moreOrders tables or JSON files of orders, read after the problem's own
     */
    public static Optional<Problem> read(Path problemFile, List<Path> moreOrders, IssueLog log) {
        return SourceFile.read(problemFile, log).flatMap(source -> read(source, moreOrders, log));
    }

    /**
     * Reads the same, checks it as thoroughly, and stops before the methods come in, so that changes can be applied.
     *
     * @return empty when the log holds an issue; otherwise its problem can be made without a fault
     */
    public static Optional<ProblemDraft> draft(Path problemFile, List<Path> moreOrders, IssueLog log) {
        return SourceFile.read(problemFile, log).flatMap(source -> readBoth(source, moreOrders, log)).map(Both::draft);
    }

    private static Optional<Problem> read(SourceFile source, List<Path> moreOrders, IssueLog log) {
        return readBoth(source, moreOrders, log).map(Both::problem);
    }

    private static Optional<Both> readBoth(SourceFile source, List<Path> moreOrders, IssueLog log) {
        return JsonLoader.loadWithSpot(source, "problem", ProblemFile.class, log)
                .flatMap(loaded -> new ProblemReader(loaded, moreOrders, log).both());
    }

    /** What was read, before and after the methods came in. */
    private record Both(ProblemDraft draft, Problem problem) {
    }

    private Optional<Both> both() {
        var kitchenFile = kitchenFile();
        var kitchen = kitchenFile.map(loaded -> new KitchenReader(calendar, log).read(loaded));
        var methods = MethodBook.read(root.child("methods"), file.methods().size(), log);
        var names = new Names(methods.ids(MethodKind.CAKE), methods.ids(MethodKind.BATCH),
                file.batches().stream().map(ProblemFile.BatchEntry::id).collect(Collectors.toSet()), methods.isComplete());
        var batches = new BatchReader(calendar, names, log).read(root.child("batches"), file.batches());
        var orders = new OrdersReader(calendar, names, file.bufferMinutes(), log);
        readOrders(orders);
        var weights = new WeightsReader(root.child("weights"), file.weights(), log).read();
        if (!log.isEmpty()) {
            return Optional.empty();
        }
        var draft = new ProblemDraft(file.title(), calendar, file.bufferMinutes(), kitchen.orElseThrow(), methods.byId(), batches,
                orders.orders(), weights, List.of(), List.of());
        var problem = withFixedSteps(draft.problem(fault -> report(fault, orders)));
        checkAllergens(problem, kitchenFile.orElseThrow(), orders);
        return log.isEmpty() ? Optional.of(new Both(draft.pinned(problem.fixedSteps()), problem)) : Optional.empty();
    }

    private Optional<Loaded<KitchenFile>> kitchenFile() {
        var at = root.child("kitchen");
        return at.node().isTextual()
                ? NamedFiles.open(at, log).flatMap(source -> JsonLoader.loadWithSpot(source, "kitchen", KitchenFile.class, log))
                : JsonLoader.load(at, "kitchen", KitchenFile.class, log);
    }

    private void readOrders(OrdersReader orders) {
        var at = root.child("orders");
        if (at.node().isTextual()) {
            NamedFiles.open(at, log).ifPresent(orders::file);
        }
        for (int i = 0; i < at.node().size(); i++) {
            var entry = at.child(i);
            if (entry.node().isTextual()) {
                NamedFiles.open(entry, log).ifPresent(orders::file);
            } else {
                orders.order(entry);
            }
        }
        moreOrders.forEach(path -> SourceFile.read(path, log).ifPresent(orders::file));
    }

    /** A fault of the expansion, at the line of the cake or batch that it concerns. */
    private void report(ExpansionFault fault, OrdersReader orders) {
        var words = ExpansionWords.of(fault);
        if (!orders.faultOfCake(fault.itemId(), words.read(), words.expected())) {
            batchSpot(fault.itemId()).fault(log, words.read(), words.expected(), "");
        }
    }

    private Spot batchSpot(String id) {
        for (int i = 0; i < file.batches().size(); i++) {
            if (file.batches().get(i).id().equals(id)) {
                return root.child("batches").child(i);
            }
        }
        return root;
    }

    private Problem withFixedSteps(Problem problem) {
        if (!log.isEmpty() || file.fixed().isEmpty()) {
            return problem;
        }
        return problem.withFixedSteps(FixedSteps.read(root.child("fixed"), file.fixed(), problem, log));
    }

    private void checkAllergens(Problem problem, Loaded<KitchenFile> kitchenFile, OrdersReader orders) {
        var check = AllergenCheck.of(problem, log);
        orders.checkAllergens(check::doubt);
        for (int i = 0; i < file.batches().size(); i++) {
            check.check(root.child("batches").child(i).child("freeFrom"));
        }
        var stores = kitchenFile.spot().child("stores");
        for (int i = 0; i < stores.node().size(); i++) {
            var shelves = stores.child(i).child("shelves");
            for (int j = 0; j < shelves.node().size(); j++) {
                check.check(shelves.child(j).child("freeFrom"));
            }
        }
    }
}
