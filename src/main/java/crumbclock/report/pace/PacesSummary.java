package crumbclock.report.pace;

import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.StepRow;
import crumbclock.report.text.TerminalText;
import crumbclock.report.view.PaceWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Real minutes beside the figures in use, for a terminal: a table of each person's paces, one of the kinds of step, what was left out. */
public final class PacesSummary {

    private static final int MOST_LEFT_OUT = 10;
    private static final int NAME = 34;

    private PacesSummary() {
    }

    /** @return lines that end with a line feed each, free of control characters from people's texts */
    public static String render(PaceReport report) {
        List<String> lines = new ArrayList<>();
        lines.add(report.kitchen() + ": real minutes of " + report.days() + (report.days() == 1 ? " day file" : " day files")
                + " beside the figures in use");
        lines.add("A pace is a factor on minutes of work: 1.2 takes a fifth longer. Half of all seen lie in the middle half.");
        paces(report, lines);
        steps(report, lines);
        leftOut(report, lines);
        return String.join("\n", lines.stream().map(TerminalText::line).toList()) + "\n";
    }

    private static void paces(PaceReport report, List<String> lines) {
        String person = "";
        for (PaceRow row : report.paces()) {
            if (!row.personId().equals(person)) {
                person = row.personId();
                lines.add("");
                lines.add(row(row.personName(), "in use", "seen", "middle half", "steps", ""));
            }
            lines.add(row("  " + row.workKind(), PaceWords.number(row.inUse()),
                    row.seen().map(seen -> PaceWords.number(seen.median())).orElse("-"), row.seen().map(PaceWords::half).orElse("-"),
                    String.valueOf(row.steps().size()), PaceWords.says(row)));
        }
    }

    private static void steps(PaceReport report, List<String> lines) {
        for (boolean handsOn : new boolean[] {true, false}) {
            List<StepRow> rows = report.steps().stream().filter(row -> row.handsOn() == handsOn).toList();
            if (!rows.isEmpty()) {
                lines.add("");
                lines.add(row(handsOn ? "Work, minutes" : "By itself, minutes", "planned", "seen", "middle half", "steps", "times planned"));
            }
            rows.forEach(row -> lines.add(row("  " + row.name(), PaceWords.planned(row), PaceWords.number(row.minutes().median()),
                    PaceWords.half(row.minutes()), String.valueOf(row.minutes().seen()),
                    row.isEnough() ? PaceWords.number(row.timesPlanned().median()) : "too few to say")));
        }
    }

    private static void leftOut(PaceReport report, List<String> lines) {
        if (report.leftOut().isEmpty() && PaceWords.unwritten(report).isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Left out");
        report.leftOut().stream().limit(MOST_LEFT_OUT).forEach(one -> lines.add("  " + PaceWords.leftOut(one)));
        if (report.leftOut().size() > MOST_LEFT_OUT) {
            lines.add("  and " + (report.leftOut().size() - MOST_LEFT_OUT) + " more on the page");
        }
        PaceWords.unwritten(report).forEach(line -> lines.add("  " + line));
    }

    private static String row(String name, String inUse, String seen, String half, String steps, String says) {
        return String.format(Locale.ROOT, "%-" + NAME + "s %-12s %-7s %-16s %-6s %s", fitted(name), inUse, seen, half, steps, says);
    }

    private static String fitted(String name) {
        return name.length() > NAME ? name.substring(0, NAME - 1) + "…" : name;
    }
}
