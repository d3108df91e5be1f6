package crumbclock.formats.pace;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.SeenStep;
import crumbclock.domain.pace.Spread;
import crumbclock.domain.pace.StepRow;
import crumbclock.formats.json.JsonText;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What finished days say of minutes as JSON: paces with each step that they were reckoned from, steps, and what was left out. */
public final class PacesJson {

    private PacesJson() {
    }

    /** Equal reports give equal text. */
    public static String write(PaceReport report) {
        var root = JsonNodeFactory.instance.objectNode();
        root.put("kitchen", report.kitchen()).put("days", report.days());
        var paces = root.putArray("paces");
        report.paces().forEach(row -> pace(paces.addObject(), row));
        var steps = root.putArray("steps");
        report.steps().forEach(row -> step(steps.addObject(), row));
        var leftOut = root.putArray("leftOut");
        report.leftOut().forEach(one -> leftOut.addObject().put("step", one.stepId()).put("from", one.from().toOffsetDateTime().toString())
                .put("until", one.until().toOffsetDateTime().toString()).put("reason", one.reason()));
        root.put("withoutStart", report.withoutStart()).put("withoutTimes", report.withoutTimes());
        return JsonText.write(root);
    }

    private static void pace(ObjectNode node, PaceRow row) {
        node.put("person", row.personId()).put("name", row.personName()).put("work", row.workKind()).put("inUse", number(row.inUse()));
        row.seen().ifPresent(seen -> spread(node.putObject("seen"), seen));
        node.put("says", row.word().words());
        row.learned().ifPresent(pace -> node.put("learned", number(pace)));
        var from = node.putArray("from");
        for (SeenStep step : row.steps()) {
            from.addObject().put("step", step.stepId()).put("from", step.from().toOffsetDateTime().toString())
                    .put("until", step.until().toOffsetDateTime().toString()).put("plainMinutes", step.plainMinutes())
                    .put("realMinutes", step.realMinutes());
        }
    }

    private static void step(ObjectNode node, StepRow row) {
        node.put("step", row.name()).put("handsOn", row.handsOn()).put("leastPlanned", row.leastPlanned()).put("mostPlanned", row.mostPlanned());
        spread(node.putObject("minutes"), row.minutes());
        spread(node.putObject("timesPlanned"), row.timesPlanned());
    }

    private static void spread(ObjectNode node, Spread spread) {
        node.put("lower", number(spread.lower())).put("median", number(spread.median())).put("upper", number(spread.upper()))
                .put("count", spread.seen());
    }

    /** At most three decimals. */
    private static BigDecimal number(double value) {
        return new BigDecimal(BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString());
    }
}
