package crumbclock.report.pace;

import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.SeenStep;
import crumbclock.domain.pace.StepRow;
import crumbclock.report.html.Templates;
import crumbclock.report.svg.PaceDrawing;
import crumbclock.report.view.PaceWords;
import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Real minutes beside the figures in use, as one page that needs no network. Equal reports give equal bytes. */
public final class PacesPage {

    private PacesPage() {
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(PaceReport report) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("kitchen", report.kitchen());
        values.put("days", report.days());
        values.put("seen", report.seen());
        values.put("leastSeen", PaceRow.LEAST_SEEN);
        values.put("leastMinutes", SeenStep.LEAST_MINUTES);
        values.put("people", people(report));
        values.put("work", report.steps().stream().filter(StepRow::handsOn).map(PacesPage::step).toList());
        values.put("alone", report.steps().stream().filter(row -> !row.handsOn()).map(PacesPage::step).toList());
        values.put("leftOut", report.leftOut().stream().map(PaceWords::leftOut).toList());
        values.put("unwritten", PaceWords.unwritten(report));
        return Templates.render("paces.ftlh", values);
    }

    /** One person: a drawing when something was seen, and the table. */
    public record PersonPart(String name, Optional<TemplateHTMLOutputModel> svg, List<PaceLine> lines) {
    }

    /** One pace as a row. */
    public record PaceLine(String work, String inUse, String seen, String half, int steps, String says, String word) {
    }

    /** One kind of step as a row. */
    public record StepLine(String name, String planned, String seen, String half, int steps, String times) {
    }

    private static List<PersonPart> people(PaceReport report) {
        Map<String, List<PaceRow>> byPerson = new LinkedHashMap<>();
        report.paces().forEach(row -> byPerson.computeIfAbsent(row.personId(), key -> new ArrayList<>()).add(row));
        return byPerson.values().stream().map(rows -> {
            List<PaceRow> seen = rows.stream().filter(row -> row.seen().isPresent()).toList();
            return new PersonPart(rows.get(0).personName(), seen.isEmpty() ? Optional.empty()
                    : Optional.of(Templates.markup(PaceDrawing.draw(seen))), rows.stream().map(PacesPage::line).toList());
        }).toList();
    }

    private static PaceLine line(PaceRow row) {
        return new PaceLine(row.workKind(), PaceWords.number(row.inUse()), row.seen().map(seen -> PaceWords.number(seen.median())).orElse("–"),
                row.seen().map(PaceWords::half).orElse("–"), row.steps().size(), PaceWords.says(row),
                row.learned().isPresent() ? "differs" : "");
    }

    private static StepLine step(StepRow row) {
        return new StepLine(row.name(), PaceWords.planned(row), PaceWords.number(row.minutes().median()) + " min", PaceWords.half(row.minutes()),
                row.minutes().seen(), row.isEnough() ? PaceWords.number(row.timesPlanned().median()) : "too few to say");
    }
}
