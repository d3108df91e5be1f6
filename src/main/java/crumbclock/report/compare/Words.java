package crumbclock.report.compare;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Measure;
import crumbclock.domain.compare.Row;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.report.view.ClockText;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Values and marks of the table as people read them. */
record Words(ClockText clock) {

    static Words of(ProblemClock clock) {
        return new Words(new ClockText(clock));
    }

    /** {@code 2 h 05 min}, {@code Sat 10:20}, {@code 96 %}, {@code 1,204}; a dash for a missing value. */
    String value(Measure measure, Cell cell) {
        if (cell.value().isEmpty()) {
            return "–";
        }
        long value = cell.value().getAsLong();
        return measure == Measure.MOMENT ? clock.dayTime((int) value) : amount(measure, value);
    }

    /** How far apart values lie: {@code 25 min}, {@code 310}. */
    static String amount(Measure measure, long value) {
        return switch (measure) {
            case MINUTES, MOMENT -> value < 0 ? "-" + ClockText.duration((int) -value) : ClockText.duration((int) value);
            case PERCENT -> value + " %";
            case COUNT, POINTS -> String.format(Locale.ROOT, "%,d", value);
        };
    }

    /** {@code best}, {@code worst}, or {@code ~} for within chance of the base, or both; empty for none. */
    static String marks(Cell cell) {
        return Stream.of(cell.mark().word(), cell.withinChance() ? "~" : "").filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** What another seed alone changes; empty when it changes nothing, or was not measured. */
    static String chance(Row row) {
        return row.spread() == 0 ? "" : "± " + amount(row.measure(), row.spread());
    }
}
