package crumbclock.report.compare;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Mark;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.compare.Row;
import crumbclock.domain.plan.Plan;
import crumbclock.report.compare.PlanFigures.Figure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;

/** Works out the table: every figure of every plan, what is best and worst, and what chance alone would do. */
public final class ComparisonTable {

    private ComparisonTable() {
    }

    /**
     * @param plans   the base first
     * @param chances the base planned with other seeds, to see how far apart plans of one and the same problem lie; may be empty
     * @param left    titles of what was not planned
     */
    public static Comparison of(List<Planned> plans, List<Plan> chances, List<String> left) {
        var base = plans.get(0);
        var figures = plans.stream().map(one -> PlanFigures.of(one, base.plan())).toList();
        var others = chances.stream().map(plan -> PlanFigures.of(new Planned(base.name(), base.title(), base.problem(), plan),
                base.plan())).toList();
        List<Row> rows = new ArrayList<>();
        for (Figure figure : all(figures)) {
            long spread = spread(figure, figures.get(0), others);
            var cells = figures.stream().map(one -> one.getOrDefault(figure, Cell.none())).toList();
            rows.add(new Row(figure.id(), figure.label(), figure.measure(), figure.less(), spread, marked(cells, judged(figure, plans), figure.less(), spread)));
        }
        return new Comparison(plans, rows, chances.size() + 1, left);
    }

    /** Figures in the base's order; what only others have comes after its like, people after people. */
    private static List<Figure> all(List<Map<Figure, Cell>> figures) {
        Set<String> ids = new LinkedHashSet<>();
        List<Figure> all = new ArrayList<>();
        for (var one : figures) {
            int at = 0;
            for (Figure figure : one.keySet()) {
                if (ids.add(figure.id())) {
                    all.add(Math.min(at, all.size()), figure);
                    at++;
                } else {
                    at = indexOf(all, figure.id()) + 1;
                }
            }
        }
        return all;
    }

    private static int indexOf(List<Figure> all, String id) {
        return all.stream().map(Figure::id).toList().indexOf(id);
    }

    private static long spread(Figure figure, Map<Figure, Cell> base, List<Map<Figure, Cell>> others) {
        List<Long> values = new ArrayList<>();
        value(base, figure).ifPresent(values::add);
        others.forEach(one -> value(one, figure).ifPresent(values::add));
        return values.isEmpty() ? 0 : values.stream().mapToLong(Long::longValue).max().orElseThrow()
                - values.stream().mapToLong(Long::longValue).min().orElseThrow();
    }

    private static OptionalLong value(Map<Figure, Cell> figures, Figure figure) {
        return figures.getOrDefault(figure, Cell.none()).value();
    }

    private static List<Boolean> judged(Figure figure, List<Planned> plans) {
        List<Boolean> judged = new ArrayList<>();
        for (Planned planned : plans) {
            boolean itself = figure.againstBase() && judged.isEmpty();
            judged.add(!itself && (figure.judgesAll() || PlanFigures.isWhole(planned.plan())));
        }
        return judged;
    }

    /**
     * Best and worst are told apart only where they lie further apart than plans of one problem do, and only where the value is
     * not what more than half of the plans have.
     *
     * @param judged for each cell whether it may be best or worst
     */
    static List<Cell> marked(List<Cell> cells, List<Boolean> judged, boolean less, long spread) {
        List<Long> values = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (judged.get(i) && cells.get(i).value().isPresent()) {
                values.add(cells.get(i).value().getAsLong());
            }
        }
        long least = values.stream().mapToLong(Long::longValue).min().orElse(0);
        long most = values.stream().mapToLong(Long::longValue).max().orElse(0);
        var base = cells.get(0).value();
        List<Cell> marked = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            var value = cells.get(i).value();
            if (value.isEmpty()) {
                marked.add(cells.get(i));
                continue;
            }
            boolean tells = judged.get(i) && most - least > spread
                    && values.stream().filter(other -> other == value.getAsLong()).count() * 2 <= values.size();
            var mark = !tells ? Mark.NONE : value.getAsLong() == (less ? least : most) ? Mark.BEST
                    : value.getAsLong() == (less ? most : least) ? Mark.WORST : Mark.NONE;
            marked.add(new Cell(value, cells.get(i).note(), mark, chance(value.getAsLong(), base, spread)));
        }
        return marked;
    }

    private static boolean chance(long value, OptionalLong base, long spread) {
        return base.isPresent() && value != base.getAsLong() && Math.abs(value - base.getAsLong()) <= spread;
    }
}
