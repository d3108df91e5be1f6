package crumbclock.formats.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.DateTimeException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads dates and times; knows no zone and no problem. Anything unclear (6/7/2026) is refused, not guessed. */
public final class ClockText {

    /** What a message says is expected of a time of day. */
    public static final String TIME_EXPECTED = "a time such as 14:30 or 2:30 pm";
    /** What a message says is expected of a stretch of a day. */
    public static final String RANGE_EXPECTED = "times from-to such as 09:00-17:30 or 9 am - 5:30 pm";
    /** What a message says is expected of a date with time. */
    public static final String MOMENT_EXPECTED =
            "a date and time such as 2026-06-05T14:30, 2026-06-05 2:30 pm or Sat 14:30";

    private static final int DAY = 24 * 60;
    private static final Pattern TIME = Pattern.compile("([0-9]{1,2})(?:[:.h]([0-9]{2})(?::00)?)?\\s*(am|pm|a\\.m\\.|p\\.m\\.)?");
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:-|–|—|\\bto\\b)\\s*(.+)");
    private static final Pattern DATED = Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})(?:[t,]\\s*|\\s+)"
            + "(.+?)\\s*(z|[+-][0-9]{2}:[0-9]{2})?");
    private static final Pattern WEEKDAY = Pattern.compile("([a-z]+)\\.?,?\\s+(.+)");

    private ClockText() {
    }

    /** A stretch of a day in minutes from midnight; {@code until} beyond 1440 lies on the next day. */
    public record DayRange(int from, int until) {
    }

    /**
     * A moment as written: on a date, or on the next such weekday.
     *
     * @param date   present when a date was given
     * @param day    present when a weekday was given
     * @param offset from UTC, when the text says one
     */
    public record Moment(Optional<LocalDate> date, Optional<DayOfWeek> day, LocalTime time, Optional<ZoneOffset> offset) {

        public Optional<LocalDateTime> local() {
            return date.map(known -> known.atTime(time));
        }
    }

    /** 14:30, 2:30 pm, 2 pm, 9:00; a bare hour needs am or pm. */
    public static Optional<LocalTime> time(String text) {
        return minuteOfDay(text).filter(minute -> minute < DAY).map(minute -> LocalTime.of(minute / 60, minute % 60));
    }

    /** 09:00-17:30, 9 am – 5:30 pm, 18:00-01:00 (into the next day), 00:00-24:00. */
    public static Optional<DayRange> range(String text) {
        var parts = RANGE.matcher(text.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        var from = minuteOfDay(parts.group(1)).filter(minute -> minute < DAY);
        var until = minuteOfDay(parts.group(2));
        if (from.isEmpty() || until.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DayRange(from.get(), until.get() > from.get() ? until.get() : until.get() + DAY));
    }

    public static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException notADate) {
            return Optional.empty();
        }
    }

    /** 2026-06-05T14:30, 2026-06-05 2:30 pm, 2026-06-05T14:30+01:00, Sat 14:30. */
    public static Optional<Moment> moment(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        var dated = DATED.matcher(lower);
        if (dated.matches()) {
            try {
                var date = LocalDate.of(Integer.parseInt(dated.group(1)), Integer.parseInt(dated.group(2)),
                        Integer.parseInt(dated.group(3)));
                var offset = Optional.ofNullable(dated.group(5)).map(shown -> ZoneOffset.of(shown.toUpperCase(Locale.ROOT)));
                return time(dated.group(4)).map(time -> new Moment(Optional.of(date), Optional.empty(), time, offset));
            } catch (DateTimeException noSuchDate) {
                return Optional.empty();
            }
        }
        var named = WEEKDAY.matcher(lower);
        if (!named.matches()) {
            return Optional.empty();
        }
        return weekday(named.group(1)).flatMap(day -> time(named.group(2))
                .map(time -> new Moment(Optional.empty(), Optional.of(day), time, Optional.empty())));
    }

    /** "saturday" or any beginning of it from three letters on, in any case. */
    public static Optional<DayOfWeek> weekday(String text) {
        String name = text.strip().toUpperCase(Locale.ROOT);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (name.length() >= 3 && day.name().startsWith(name)) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    /** Minutes from midnight, 0 to 1440 for 24:00, of a time of day. */
    public static Optional<Integer> minuteOfDay(String text) {
        var parts = TIME.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!parts.matches() || parts.group(2) == null && parts.group(3) == null) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(parts.group(1));
        int minute = parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2));
        if (parts.group(3) != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (parts.group(3).startsWith("p") ? 12 : 0);
        }
        int ofDay = hour * 60 + minute;
        return minute < 60 && ofDay <= DAY ? Optional.of(ofDay) : Optional.empty();
    }
}
