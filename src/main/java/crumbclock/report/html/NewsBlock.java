package crumbclock.report.html;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.day.DayNews.Kind;
import crumbclock.report.view.ChangeWords;
import crumbclock.report.view.FindingWords;
import crumbclock.report.view.PaceWords;
import crumbclock.report.view.PlanView;
import java.util.List;

/** What a plan made during the day changes, for the top of its page. */
public record NewsBlock(String now, List<PersonRow> people, List<String> lost, List<String> inFact, List<String> notes,
        List<String> paces) {

    /** One person's changes in time order. */
    public record PersonRow(String name, List<ChangeRow> changes) {
    }

    /** One change: when, in words, and a sign for its kind. */
    public record ChangeRow(String time, String sign, String text) {
    }

    static NewsBlock of(PlanView view, DayNews news) {
        var people = news.people().stream().map(person -> new PersonRow(view.personName(person.personId()),
                person.changes().stream().map(change -> new ChangeRow(view.clock().timeSeenFrom(news.now(), change.minute()),
                        sign(change.kind()), ChangeWords.of(view, change).replaceFirst("^not ", ""))).toList())).toList();
        return new NewsBlock(view.clock().dateTime(news.now()), people, news.lost(),
                news.inFact().stream().map(one -> FindingWords.withoutPlace(view.clock(), one)).toList(),
                news.notes().stream().map(note -> (note.line() > 0 ? "Line " + note.line() + ": " : "") + note.message()).toList(),
                PaceWords.soFar(news.soFar()));
    }

    private static String sign(Kind kind) {
        return switch (kind) {
            case MOVED -> "moved";
            case NEW -> "new";
            case GONE -> "not";
        };
    }
}
