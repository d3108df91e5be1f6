package crumbclock.domain.problem;

import crumbclock.units.Span;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns minutes from the problem's start into clock times and back. Minutes are elapsed time, so a clock change
 * makes a calendar day 23 or 25 hours long and nothing else.
 *
 * @param start          first minute of the problem, whole minutes
 * @param horizonMinutes minutes from start to the problem's end, at least 1
 */
public record ProblemClock(ZonedDateTime start, int horizonMinutes) {

    public ZonedDateTime at(int minute) {
        return start.plusMinutes(minute);
    }

    public int minuteOf(ZonedDateTime time) {
        return Math.toIntExact(Duration.between(start, time).toMinutes());
    }

    public ZoneId zone() {
        return start.getZone();
    }

    /**
     * Calendar days that the problem touches, from local midnight to local midnight; the first usually starts before
     * minute 0 and the last ends at or after the horizon.
     */
    public List<Span> days() {
        List<Span> days = new ArrayList<>();
        var day = start.toLocalDate();
        while (minuteOf(day.atStartOfDay(zone())) < horizonMinutes) {
            days.add(new Span(minuteOf(day.atStartOfDay(zone())), minuteOf(day.plusDays(1).atStartOfDay(zone()))));
            day = day.plusDays(1);
        }
        return List.copyOf(days);
    }
}
