package crumbclock.report.compare;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Measure;
import crumbclock.domain.compare.Move;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Wish;
import crumbclock.report.view.PlanView;
import crumbclock.report.view.ShelfStretch;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The figures of one plan that can be set beside those of another. */
final class PlanFigures {

    private final PlanView view;
    private final Plan plan;
    private final Plan base;
    private final Map<Figure, Cell> cells = new LinkedHashMap<>();

    private PlanFigures(Planned planned, Plan base) {
        this.view = new PlanView(planned.problem(), planned.plan());
        this.plan = planned.plan();
        this.base = base;
    }

    /** A row's name and what it counts. */
    record Figure(String id, String label, Measure measure, boolean less) {

        /** Figures that judge every plan; the others judge only plans that hold and leave nothing out. */
        private static final Set<String> OF_ALL = Set.of("broken-rules", "not-possible", "late-orders", "late-minutes");

        boolean judgesAll() {
            return OF_ALL.contains(id);
        }

        /** Whether it says how far a plan is from the base, which is then not judged itself. */
        boolean againstBase() {
            return id.startsWith("moved-");
        }
    }

    /** Whether a plan holds and makes every order: one that makes less has an easy life in all other figures. */
    static boolean isWhole(Plan plan) {
        return plan.isSound() && plan.timetable().outcomes().stream().allMatch(Outcome::possible);
    }

    /** @param base the plan that moved steps are counted against */
    static Map<Figure, Cell> of(Planned planned, Plan base) {
        var figures = new PlanFigures(planned, base);
        figures.soundness();
        figures.orders();
        figures.people();
        figures.times();
        figures.places();
        figures.moves();
        figures.cost();
        return figures.cells;
    }

    private void put(String id, String label, Measure measure, boolean less, Cell cell) {
        cells.put(new Figure(id, label, measure, less), cell);
    }

    private void soundness() {
        int broken = plan.findings().size();
        put("broken-rules", "broken rules (0: sound)", Measure.COUNT, true, Cell.of(broken, broken == 0 ? "sound" : "NOT SOUND"));
    }

    private void orders() {
        var possible = plan.timetable().outcomes().stream().filter(Outcome::possible).toList();
        var late = possible.stream().filter(one -> one.lateMinutes() > 0).toList();
        var gone = plan.timetable().outcomes().stream().filter(one -> !one.possible()).toList();
        put("not-possible", "orders not possible", Measure.COUNT, true, Cell.of(gone.size(), ids(gone)));
        put("late-orders", "late orders", Measure.COUNT, true, Cell.of(late.size(), ids(late)));
        put("late-minutes", "late by, in all", Measure.MINUTES, true,
                Cell.of(late.stream().mapToLong(Outcome::lateMinutes).sum(), ""));
        put("smallest-buffer", "smallest buffer", Measure.MINUTES, false,
                possible.stream().min(Comparator.comparingInt(Outcome::bufferMinutes))
                        .map(one -> Cell.of(one.bufferMinutes(), one.orderId())).orElse(Cell.none()));
    }

    private static String ids(List<Outcome> outcomes) {
        return String.join(" ", outcomes.stream().map(Outcome::orderId).toList());
    }

    private void people() {
        long all = 0;
        for (Person person : view.problem().kitchen().people()) {
            int minutes = view.handsMinutes(person.id());
            all += minutes;
            put("hands-" + person.id(), "hands on, " + person.name(), Measure.MINUTES, true, Cell.of(minutes, ""));
        }
        put("hands", "hands on, all", Measure.MINUTES, true, Cell.of(all, ""));
    }

    private void times() {
        put("first-start", "first start", Measure.MOMENT, false, plan.timetable().steps().stream()
                .min(Comparator.comparingInt(one -> one.start()))
                .map(one -> Cell.of(one.start(), view.stepName(one.stepId()))).orElse(Cell.none()));
        put("last-ready", "last cake ready", Measure.MOMENT, true, plan.timetable().outcomes().stream().filter(Outcome::possible)
                .max(Comparator.comparingInt(Outcome::readyMinute))
                .map(one -> Cell.of(one.readyMinute(), one.orderId())).orElse(Cell.none()));
    }

    private void places() {
        put("fullest-shelf", "fullest shelf", Measure.PERCENT, true, ShelfStretch.of(view).stream()
                .min(Comparator.comparingInt(ShelfStretch::freePercent))
                .map(one -> Cell.of(100L - one.freePercent(), one.store().name() + " " + one.shelf().name() + ", "
                        + view.clock().dayTime(one.when().start()))).orElse(Cell.none()));
        long loads = plan.timetable().steps().stream().filter(one -> !one.cavityId().isEmpty())
                .map(one -> one.cavityId() + " " + one.start()).distinct().count();
        put("oven-loads", "oven loads", Measure.COUNT, true, Cell.of(loads, ""));
        put("oven-minutes", "oven on", Measure.MINUTES, true, Cell.of(plan.timetable().ovenRuns().stream()
                .mapToLong(run -> run.until() - run.from()).sum(), ""));
    }

    private void moves() {
        var moves = Moves.between(base, plan);
        int common = Moves.common(base, plan);
        put("moved-steps", "steps moved", Measure.COUNT, true, Cell.of(moves.size(), "of " + common + " in both"));
        put("moved-minutes", "moved by, on average", Measure.MINUTES, true, moves.isEmpty() ? Cell.of(0, "")
                : Cell.of(Math.round(moves.stream().mapToInt(Move::minutes).average().orElseThrow()), ""));
        put("moved-most", "moved most", Measure.MINUTES, true, moves.stream().max(Comparator.comparingInt(Move::minutes))
                .map(move -> Cell.of(move.minutes(), view.ownerLabel(view.ownerId(move.stepId())) + " " + view.stepName(move.stepId())))
                .orElse(Cell.of(0, "")));
    }

    private void cost() {
        for (Wish wish : Wish.values()) {
            plan.cost().stream().filter(line -> line.name().equals(wish.name())).findFirst().ifPresent(line ->
                    put("cost-" + wish.name().toLowerCase(Locale.ROOT), wish + " " + wish.title(), Measure.POINTS, true,
                            Cell.of(line.points(), "")));
        }
        put("cost-wishes", "all wishes", Measure.POINTS, true, Cell.of(plan.softCost(), ""));
    }
}
