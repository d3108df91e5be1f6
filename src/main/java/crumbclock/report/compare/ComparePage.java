package crumbclock.report.compare;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Measure;
import crumbclock.domain.compare.Move;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.compare.Row;
import crumbclock.report.html.Templates;
import crumbclock.report.svg.PairDrawing;
import crumbclock.report.view.PlanView;
import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The comparison as one page that needs no network; each plan's own page is a link away. Equal comparisons give equal bytes. */
public final class ComparePage {

    /** With more plans only the pairs with the base are drawn, so that the page stays small. */
    private static final int MOST_FOR_ALL_PAIRS = 8;
    private static final int MOST_MOVES = 12;

    private final Comparison comparison;
    private final Words words;
    private final PairDrawing drawing;

    private ComparePage(Comparison comparison) {
        this.comparison = comparison;
        this.words = Words.of(comparison.base().problem().clock());
        this.drawing = new PairDrawing(comparison.plans());
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(Comparison comparison) {
        return Templates.render("compare.ftlh", new ComparePage(comparison).values());
    }

    private Map<String, Object> values() {
        var problem = comparison.base().problem();
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("title", problem.title());
        values.put("kitchen", problem.kitchen().name());
        values.put("from", words.clock().dateTime(0));
        values.put("until", words.clock().dateTime(problem.clock().horizonMinutes()));
        values.put("zone", problem.clock().zone().getId());
        values.put("seed", comparison.base().plan().search().seed());
        values.put("seeds", comparison.seeds());
        values.put("left", comparison.left());
        values.put("plans", plans());
        values.put("rows", comparison.rows().stream().map(this::row).toList());
        values.put("shared", Templates.markup(drawing.shared()));
        values.put("allPairs", comparison.plans().size() <= MOST_FOR_ALL_PAIRS);
        values.put("pairs", pairs());
        return values;
    }

    /** A plan as a column of the table. */
    public record PlanColumn(int number, String name, String title, boolean sound) {
    }

    private List<PlanColumn> plans() {
        List<PlanColumn> columns = new ArrayList<>();
        for (Planned planned : comparison.plans()) {
            columns.add(new PlanColumn(columns.size(), planned.name(), planned.title(), planned.plan().isSound()));
        }
        return columns;
    }

    /** A figure as a row of the table. */
    public record FigureRow(String label, List<Value> values, String chance) {
    }

    /** One value of the table. */
    public record Value(String text, String note, String mark, boolean withinChance) {
    }

    private FigureRow row(Row row) {
        return new FigureRow(row.label(), row.cells().stream().map(cell -> value(row.measure(), cell)).toList(), Words.chance(row));
    }

    private Value value(Measure measure, Cell cell) {
        return new Value(words.value(measure, cell), cell.note(), cell.mark().word(), cell.withinChance());
    }

    /** Two plans over each other. */
    public record Pair(int first, int second, String firstTitle, String secondTitle, boolean shownFirst, int moved, int drawn, int common,
            int onlyFirst, int onlySecond, String average, List<MoveRow> moves, TemplateHTMLOutputModel svg) {
    }

    /** One of the furthest moves. */
    public record MoveRow(String step, String from, String to, String by) {
    }

    /** The pair that is shown first stands last, where a page without a chosen pair finds it. */
    private List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        int count = comparison.plans().size();
        for (int first = 0; first < count; first++) {
            for (int second = first + 1; second < count && (first == 0 || count <= MOST_FOR_ALL_PAIRS); second++) {
                pairs.add(pair(first, second));
            }
        }
        if (!pairs.isEmpty()) {
            pairs.add(pairs.remove(0));
        }
        return pairs;
    }

    private Pair pair(int first, int second) {
        var one = comparison.plans().get(first);
        var other = comparison.plans().get(second);
        var moves = Moves.between(one.plan(), other.plan());
        int common = Moves.common(one.plan(), other.plan());
        long average = Math.round(moves.stream().mapToInt(Move::minutes).average().orElse(0));
        var view = new PlanView(one.problem(), one.plan());
        var furthest = moves.stream().sorted(Comparator.comparingInt(Move::minutes).reversed()).limit(MOST_MOVES)
                .map(move -> move(view, move)).toList();
        return new Pair(first, second, one.title(), other.title(), first == 0 && second == 1, moves.size(),
                drawing.drawn(first, second, moves), common, one.plan().timetable().steps().size() - common,
                other.plan().timetable().steps().size() - common, Words.amount(Measure.MINUTES, average), furthest,
                Templates.markup(drawing.draw(first, second, moves)));
    }

    private MoveRow move(PlanView view, Move move) {
        return new MoveRow(view.ownerLabel(view.ownerId(move.stepId())) + " " + view.stepName(move.stepId()),
                words.clock().dayTime(move.from()), words.clock().dayTime(move.to()),
                Words.amount(Measure.MINUTES, move.minutes()) + (move.to() < move.from() ? " earlier" : " later"));
    }
}
