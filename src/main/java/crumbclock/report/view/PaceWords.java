package crumbclock.report.view;

import crumbclock.domain.pace.LeftOut;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.pace.PaceWord;
import crumbclock.domain.pace.Spread;
import crumbclock.domain.pace.StepRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Paces and minutes that were seen, in words. */
public final class PaceWords {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private PaceWords() {
    }

    /** {@code 1.52}: at most two decimals. */
    public static String number(double value) {
        var rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** {@code 1.4 to 1.6}: between which two the middle half lies. */
    public static String half(Spread spread) {
        String lower = number(spread.lower());
        String upper = number(spread.upper());
        return lower.equals(upper) ? lower : lower + " to " + upper;
    }

    /** {@code 6 steps}. */
    public static String steps(int count) {
        return count + (count == 1 ? " step" : " steps");
    }

    /** {@code slower than in use}; with too few, how many are needed. */
    public static String says(PaceRow row) {
        return row.word().words() + (row.word() == PaceWord.TOO_FEW ? ", " + PaceRow.LEAST_SEEN + " are needed" : "");
    }

    /** {@code 15–20 min}. */
    public static String planned(StepRow row) {
        return row.leastPlanned() == row.mostPlanned() ? row.leastPlanned() + " min" : row.leastPlanned() + "–" + row.mostPlanned() + " min";
    }

    /** {@code Maud, mixing: pace 1.52 so far (6 steps), 1.3 in use}. */
    public static String soFar(PaceRow row) {
        return row.personName() + ", " + row.workKind() + ": pace " + number(row.seen().orElseThrow().median()) + " so far ("
                + steps(row.steps().size()) + (row.word() == PaceWord.TOO_FEW ? ", too few to say" : "") + "), " + number(row.inUse()) + " in use";
    }

    /** One sentence for each pace of which something was seen. */
    public static List<String> soFar(PaceReport report) {
        return report.paces().stream().filter(row -> row.seen().isPresent()).map(PaceWords::soFar).toList();
    }

    /** {@code A1/mix, Sat 30 May 10:00–10:25: it was done again}. */
    public static String leftOut(LeftOut one) {
        String until = one.until().equals(one.from()) ? ""
                : "–" + (one.until().toLocalDate().equals(one.from().toLocalDate()) ? TIME : MOMENT).format(one.until());
        return one.stepId() + ", " + MOMENT.format(one.from()) + until + ": " + one.reason();
    }

    /** What counted for nothing because too little was written down; empty for nothing. */
    public static List<String> unwritten(PaceReport report) {
        List<String> lines = new ArrayList<>();
        if (report.withoutStart() > 0) {
            lines.add(steps(report.withoutStart()) + (report.withoutStart() == 1 ? " is" : " are")
                    + " recorded as done with no time of start; write \"started\", too, and they count.");
        }
        if (report.withoutTimes() > 0) {
            lines.add(steps(report.withoutTimes()) + (report.withoutTimes() == 1 ? " is" : " are") + " told to be slower without both times. "
                    + "They do not count: nobody writes when all goes as planned, so everybody would look slow.");
        }
        return lines;
    }
}
