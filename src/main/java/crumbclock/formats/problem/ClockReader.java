package crumbclock.formats.problem;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.Spot;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;

/** Start, end and zone of a problem to its calendar; with an issue for each that is none, and then a stand-in that serves to find more. */
public record ClockReader(IssueLog log) {

    private static final int MOST_DAYS = 60;
    private static final String EXPECTED = "a date and time such as 2026-06-05T14:30";

    public ProblemCalendar read(Spot spot, ProblemFile file) {
        var zone = zone(spot.child("zone"), file.zone());
        var usable = zone.orElse(ZoneOffset.UTC);
        var start = moment(spot.child("start"), file.start(), usable);
        var end = moment(spot.child("end"), file.end(), usable);
        if (start.isEmpty() || end.isEmpty()) {
            return ProblemCalendar.standIn(usable);
        }
        long minutes = Duration.between(start.get(), end.get()).toMinutes();
        if (minutes < 1 || minutes > MOST_DAYS * 1440L) {
            spot.child("end").fault(log, "a moment after the start, " + file.start() + ", and at most " + MOST_DAYS + " days after it", "");
            return ProblemCalendar.standIn(usable);
        }
        return new ProblemCalendar(new ProblemClock(start.get(), (int) minutes), zone.isPresent());
    }

    private Optional<ZoneId> zone(Spot spot, String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException unknown) {
            String advice = Nearest.advice(name, ZoneId.getAvailableZoneIds());
            spot.fault(log, "a time zone by its IANA name, such as Europe/London", advice.startsWith("Did") ? advice : "");
            return Optional.empty();
        }
    }

    private Optional<ZonedDateTime> moment(Spot spot, String text, ZoneId zone) {
        var local = ClockText.moment(text).flatMap(ClockText.Moment::local);
        if (local.isEmpty() || local.get().getYear() < 1970 || local.get().getYear() > 2200) {
            spot.fault(log, EXPECTED, "");
            return Optional.empty();
        }
        var zoned = local.get().atZone(zone);
        if (!zoned.toLocalDateTime().equals(local.get())) {
            spot.fault(log, EXPECTED + " that the clocks in " + zone + " do not jump over", "");
            return Optional.empty();
        }
        return Optional.of(zoned);
    }
}
