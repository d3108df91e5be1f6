package crumbclock.report.view;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.units.Span;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Minutes from the problem's start as people say them. Weekdays and months are English whatever the machine speaks, so
 * that equal plans give equal bytes.
 */
public final class ClockText {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);

    private final ProblemClock clock;

    public ClockText(ProblemClock clock) {
        this.clock = clock;
    }

    /** {@code 10:45}. */
    public String time(int minute) {
        return TIME.format(clock.at(minute));
    }

    /** {@code Sat 13 Jun}. */
    public String day(int minute) {
        return DAY.format(clock.at(minute));
    }

    /** {@code Saturday 13 June 2026}. */
    public String longDay(int minute) {
        return LONG_DAY.format(clock.at(minute));
    }

    /** {@code Sat 10:45}. */
    public String dayTime(int minute) {
        return SHORT_DAY.format(clock.at(minute)) + " " + time(minute);
    }

    /** {@code Sat 13 Jun 10:45}. */
    public String dateTime(int minute) {
        return day(minute) + " " + time(minute);
    }

    /** {@code 10:45–11:00}, or with both weekdays when the stretch goes over midnight. */
    public String span(Span span) {
        return sameDay(span.start(), span.end())
                ? time(span.start()) + "–" + time(span.end())
                : dayTime(span.start()) + " – " + dayTime(span.end());
    }

    /** {@code Sat 10:45–11:00}, or with both weekdays. */
    public String daySpan(Span span) {
        return sameDay(span.start(), span.end())
                ? dayTime(span.start()) + "–" + time(span.end())
                : dayTime(span.start()) + " – " + dayTime(span.end());
    }

    /** The clock time alone when it falls on the same day as {@code seenFrom}, else with the weekday. */
    public String timeSeenFrom(int seenFrom, int minute) {
        return sameDay(seenFrom, minute) ? time(minute) : dayTime(minute);
    }

    public boolean sameDay(int one, int other) {
        return clock.at(one).toLocalDate().equals(clock.at(other).toLocalDate());
    }

    /** {@code 25 min}, {@code 2 h}, {@code 2 h 05 min}; minutes at least 0. */
    public static String duration(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        if (hours == 0) {
            return minutes + " min";
        }
        return rest == 0 ? hours + " h" : String.format(Locale.ROOT, "%d h %02d min", hours, rest);
    }
}
