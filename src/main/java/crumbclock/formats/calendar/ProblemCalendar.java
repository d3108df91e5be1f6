package crumbclock.formats.calendar;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.units.Span;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns clock times into minutes from the problem's start. Minutes are elapsed time: on the night of a clock change a shift
 * from 18:00 to 06:00 is 11 or 13 hours long.
 *
 * @param clock   the problem's clock
 * @param trusted false while start, end or zone of the problem could not be read: times are then read, but nothing is said about
 *                their lying outside the problem
 */
public record ProblemCalendar(ProblemClock clock, boolean trusted) {

    /** Key of a calendar that holds for every day not named otherwise. */
    public static final String EVERY_DAY = "everyday";

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    /** The whole problem. */
    public Span whole() {
        return new Span(0, clock.horizonMinutes());
    }

    /** Whether a moment can be a step's or a hand-over's: from the start to the end, both included. */
    public boolean holds(int minute) {
        return !trusted || 0 <= minute && minute <= clock.horizonMinutes();
    }

    /** "2026-06-04T18:00 to 2026-06-06T12:00", for messages. */
    public String showWhole() {
        return show(0) + " to " + show(clock.horizonMinutes());
    }

    /** Local clock time of a minute; in the repeated hour of a clock change two minutes share one text. */
    public String show(int minute) {
        return SHOWN.format(clock.at(minute));
    }

    /**
     * Minute of a date and time as written, or of the next such weekday at or after the problem's start.
     * A time in the repeated hour of a clock change is the first one, unless an offset says otherwise.
     *
     * @return empty when the text is no moment, or the clock jumps over it that day
     */
    public OptionalInt minute(String text) {
        var moment = ClockText.moment(text);
        if (moment.isEmpty()) {
            return OptionalInt.empty();
        }
        var local = moment.get().local().orElseGet(() -> nextOn(moment.get().day().orElseThrow(), moment.get()));
        if (Math.abs(ChronoUnit.DAYS.between(clock.start().toLocalDate(), local.toLocalDate())) > 3_660) {
            return OptionalInt.empty();
        }
        var zoned = ZonedDateTime.ofLocal(local, clock.zone(), moment.get().offset().orElse(null));
        boolean said = moment.get().offset().map(zoned.getOffset()::equals).orElse(true);
        boolean exists = zoned.toLocalDateTime().equals(local) && said;
        return exists ? OptionalInt.of(clock.minuteOf(zoned)) : OptionalInt.empty();
    }

    private LocalDateTime nextOn(DayOfWeek day, ClockText.Moment moment) {
        var start = clock.start().toLocalDateTime();
        var first = start.toLocalDate().with(TemporalAdjusters.nextOrSame(day)).atTime(moment.time());
        return first.isBefore(start) ? first.plusWeeks(1) : first;
    }

    /**
     * Spans of a weekly calendar inside the problem, sorted, those that touch joined; overlapping ones stay apart, so that the caller
     * can name them.
     *
     * @param ranges by day key: {@link #EVERY_DAY}, a weekday's full name, or a date; a date replaces its weekday, a weekday
     *               replaces every day
     */
    public List<Span> spans(Map<String, List<ClockText.DayRange>> ranges) {
        List<Span> found = new ArrayList<>();
        var day = clock.start().toLocalDate().minusDays(1);
        var last = clock.at(clock.horizonMinutes()).toLocalDate();
        for (; !day.isAfter(last); day = day.plusDays(1)) {
            for (var range : rangesOf(day, ranges)) {
                int from = Math.max(0, minuteOf(day, range.from()));
                int until = Math.min(clock.horizonMinutes(), minuteOf(day, range.until()));
                if (from < until) {
                    found.add(new Span(from, until));
                }
            }
        }
        found.sort(null);
        return joined(found);
    }

    private static List<ClockText.DayRange> rangesOf(LocalDate day, Map<String, List<ClockText.DayRange>> ranges) {
        String weekday = day.getDayOfWeek().name().toLowerCase(Locale.ROOT);
        return Optional.ofNullable(ranges.get(day.toString()))
                .or(() -> Optional.ofNullable(ranges.get(weekday)))
                .orElseGet(() -> ranges.getOrDefault(EVERY_DAY, List.of()));
    }

    private int minuteOf(LocalDate day, int minuteOfDay) {
        var local = day.plusDays(minuteOfDay / 1440).atTime(minuteOfDay % 1440 / 60, minuteOfDay % 60);
        return clock.minuteOf(local.atZone(clock.zone()));
    }

    private static List<Span> joined(List<Span> sorted) {
        List<Span> joined = new ArrayList<>();
        for (Span span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).end() == span.start()) {
                joined.set(last, new Span(joined.get(last).start(), span.end()));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    /** A calendar for a problem whose own times could not be read: good for finding faults, never for planning. */
    public static ProblemCalendar standIn(ZoneId zone) {
        var start = LocalDateTime.of(2026, 1, 5, 0, 0).atZone(zone);
        return new ProblemCalendar(new ProblemClock(start, 7 * 1440), false);
    }
}
