package crumbclock.report.text;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.day.DayNews.Change;
import crumbclock.domain.day.DayNews.PersonNews;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.ChangeWords;
import crumbclock.report.view.FindingWords;
import crumbclock.report.view.PaceWords;
import crumbclock.report.view.PlanView;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is different from now on, for each person in time order, and what is lost; for the terminal. */
public final class NewsText {

    private static final int MOST_CHANGES = 6;
    private static final int MOST_LINES = 8;

    private NewsText() {
    }

    /** @return lines that end with a line feed each, free of control characters from people's texts */
    public static String render(Problem problem, Plan plan, DayNews news) {
        var view = new PlanView(problem, plan);
        List<String> lines = new ArrayList<>();
        lines.add("From " + view.clock().dayTime(news.now()) + " on");
        if (news.people().isEmpty()) {
            lines.add("  nothing is different for anybody");
        }
        for (PersonNews person : news.people()) {
            lines.add("  " + view.personName(person.personId()));
            for (Change change : person.changes().subList(0, Math.min(MOST_CHANGES, person.changes().size()))) {
                lines.add(String.format(Locale.ROOT, "    %-6s %s", view.clock().time(change.minute()), ChangeWords.of(view, change)));
            }
            more(lines, "    ", person.changes().size() - MOST_CHANGES, "for " + view.personName(person.personId()));
        }
        list(lines, "Lost, late or not possible", news.lost());
        list(lines, "Broken in fact (nothing planned from now on breaks a rule)",
                news.inFact().stream().map(one -> FindingWords.withoutPlace(view.clock(), one)).toList());
        list(lines, "Assumed", news.notes().stream().map(note -> (note.line() > 0 ? "line " + note.line() + ": " : "")
                + note.message()).toList());
        list(lines, "Real minutes so far, beside the figures in use", PaceWords.soFar(news.soFar()));
        lines.add("");
        return String.join("\n", lines.stream().map(TerminalText::line).toList()) + "\n";
    }

    private static void list(List<String> lines, String title, List<String> texts) {
        if (texts.isEmpty()) {
            return;
        }
        lines.add(title);
        texts.stream().limit(MOST_LINES).forEach(text -> lines.add("  " + text));
        more(lines, "  ", texts.size() - MOST_LINES, "on the page");
    }

    private static void more(List<String> lines, String indent, int more, String where) {
        if (more > 0) {
            lines.add(indent + "and " + more + " more " + where);
        }
    }
}
