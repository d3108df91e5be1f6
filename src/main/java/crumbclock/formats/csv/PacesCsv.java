package crumbclock.formats.csv;

import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.StepRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What finished days say of minutes, for spreadsheets: one row for each pace, then one for each kind of step. */
public final class PacesCsv {

    private static final List<String> HEADER = List.of("table", "person", "name", "work_or_step", "in_use", "in_use_most", "seen_lower",
            "seen_median", "seen_upper", "count", "says", "learned");

    private PacesCsv() {
    }

    /** @return RFC 4180 text with a header, ends of lines CR LF */
    public static String write(PaceReport report) {
        List<List<Object>> rows = new ArrayList<>();
        for (PaceRow row : report.paces()) {
            rows.add(List.of("pace", row.personId(), row.personName(), row.workKind(), number(row.inUse()), "",
                    row.seen().<Object>map(seen -> number(seen.lower())).orElse(""), row.seen().<Object>map(seen -> number(seen.median())).orElse(""),
                    row.seen().<Object>map(seen -> number(seen.upper())).orElse(""), row.steps().size(), row.word().words(),
                    row.learned().<Object>map(PacesCsv::number).orElse("")));
        }
        for (StepRow row : report.steps()) {
            rows.add(List.of("step", "", "", row.name(), row.leastPlanned(), row.mostPlanned(), number(row.minutes().lower()),
                    number(row.minutes().median()), number(row.minutes().upper()), row.minutes().seen(),
                    row.isEnough() ? "" : "too few to say", ""));
        }
        return OutCells.table(HEADER, rows);
    }

    private static BigDecimal number(double value) {
        return new BigDecimal(BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString());
    }
}
