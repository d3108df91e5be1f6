package crumbclock.report.compare;

import static crumbclock.report.text.TerminalText.padded;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Comparison;
import crumbclock.domain.compare.Planned;
import crumbclock.domain.compare.Row;
import crumbclock.report.text.TerminalText;
import java.util.ArrayList;
import java.util.List;

/** The table for a terminal: figures as rows; plans as columns, a few at a time, the base always among them. */
public final class CompareSummary {

    private static final int COLUMNS = 4;
    private static final int LABEL = 36;
    private static final int WIDTH = 24;

    private final Comparison comparison;
    private final Words words;
    private final StringBuilder out = new StringBuilder();

    private CompareSummary(Comparison comparison) {
        this.comparison = comparison;
        this.words = Words.of(comparison.base().problem().clock());
    }

    /** Lines that end with {@code \n}. */
    public static String render(Comparison comparison) {
        var summary = new CompareSummary(comparison);
        summary.heading();
        int others = comparison.plans().size() - 1;
        for (int from = 1; from <= Math.max(1, others); from += COLUMNS - 1) {
            summary.block(from, Math.min(others, from + COLUMNS - 2));
        }
        summary.foot();
        return summary.out.toString();
    }

    private void heading() {
        line(comparison.base().problem().title() + ", and what if");
        for (int i = 1; i < comparison.plans().size(); i++) {
            line("  " + i + "  " + comparison.plans().get(i).title());
        }
    }

    private void block(int from, int until) {
        line("");
        List<Integer> columns = new ArrayList<>(List.of(0));
        for (int i = from; i <= until; i++) {
            columns.add(i);
        }
        var head = new StringBuilder(padded("", LABEL));
        columns.forEach(i -> head.append(padded(i == 0 ? "base" : i + " " + shortened(comparison.plans().get(i)), WIDTH)));
        line(head + "chance");
        for (Row row : comparison.rows()) {
            var text = new StringBuilder(padded(row.label(), LABEL));
            columns.forEach(i -> text.append(padded(cell(row, row.cells().get(i)), WIDTH)));
            line(text + Words.chance(row));
        }
    }

    private static String shortened(Planned planned) {
        return planned.name().length() > WIDTH - 5 ? planned.name().substring(0, WIDTH - 5) : planned.name();
    }

    private String cell(Row row, Cell cell) {
        String marks = Words.marks(cell);
        return words.value(row.measure(), cell) + (marks.isEmpty() ? "" : " " + marks);
    }

    private void foot() {
        line("");
        line(comparison.seeds() == 1 ? "What chance alone would do was not measured."
                : "chance: how far apart plans of the base lie with " + comparison.seeds() + " seeds; where plans do not differ by more,");
        if (comparison.seeds() > 1) {
            line("nothing is best or worst. ~ stands for within chance: the difference to the base means nothing.");
        }
        line("A plan that leaves an order out, or breaks a rule, is no best or worst but in what is late or not possible.");
        if (!comparison.left().isEmpty()) {
            line("Ended early; not planned: " + String.join("; ", comparison.left()) + ".");
        }
    }

    private void line(String text) {
        out.append(TerminalText.line(text)).append('\n');
    }
}
