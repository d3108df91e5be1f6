package crumbclock.formats.day;

import crumbclock.domain.problem.ProblemClock;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.units.Span;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/** Times as people write them on the day: mostly without a date. */
public final class DayTimes {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final ProblemClock clock;
    private final int now;

    /** @param now what a time without a day is near to: the last such time at or before it, else the next one */
    public DayTimes(ProblemClock clock, int now) {
        this.clock = clock;
        this.now = now;
    }

    /** A moment inside the problem; empty for any other text. */
    public OptionalInt minute(String text) {
        var bare = ClockText.time(text);
        if (bare.isEmpty()) {
            var minute = new ProblemCalendar(clock, true).minute(text);
            return minute.isPresent() && holds(minute.getAsInt()) ? minute : OptionalInt.empty();
        }
        TreeSet<Integer> minutes = minutesOf(clock, text);
        Integer before = minutes.floor(now);
        Integer after = minutes.ceiling(now);
        return before != null ? OptionalInt.of(before) : after != null ? OptionalInt.of(after) : OptionalInt.empty();
    }

    /**
     * The moment that is meant by now: with its day, or a time of day that comes once in the problem.
     *
     * @return empty when it is none, lies outside the problem, or comes more than once
     */
    public static OptionalInt now(ProblemClock clock, String text) {
        if (ClockText.time(text).isPresent()) {
            var minutes = minutesOf(clock, text);
            return minutes.size() == 1 ? OptionalInt.of(minutes.first()) : OptionalInt.empty();
        }
        var minute = new ProblemCalendar(clock, true).minute(text);
        return minute.isPresent() && minute.getAsInt() >= 0 && minute.getAsInt() <= clock.horizonMinutes() ? minute
                : OptionalInt.empty();
    }

    /** The same moment as of a day that is over: a time without a day is the one nearest to another moment. */
    OptionalInt near(String text, int minute) {
        return ClockText.time(text).isEmpty() ? minute(text)
                : minutesOf(clock, text).stream()
                        .min(Comparator.comparingInt((Integer one) -> Math.abs(one - minute)).thenComparing(one -> one))
                        .map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** All moments that may be meant, the first one first. */
    List<Integer> all(String text) {
        if (ClockText.time(text).isPresent()) {
            return List.copyOf(minutesOf(clock, text));
        }
        var minute = minute(text);
        return minute.isPresent() ? List.of(minute.getAsInt()) : List.of();
    }

    private static TreeSet<Integer> minutesOf(ProblemClock clock, String text) {
        var minutes = new TreeSet<Integer>();
        var time = ClockText.time(text).orElseThrow();
        LocalDate last = clock.at(clock.horizonMinutes()).toLocalDate();
        for (LocalDate day = clock.at(0).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            int minute = clock.minuteOf(day.atTime(time).atZone(clock.zone()));
            if (minute >= 0 && minute <= clock.horizonMinutes()) {
                minutes.add(minute);
            }
        }
        return minutes;
    }

    /**
     * From-to, or from the line's time on: to the end of its day, or of the problem.
     *
     * @param text    from-to, "until" a time, or empty
     * @param dayOnly without an end it lasts for that day
     */
    Optional<Span> span(String text, int at, boolean dayOnly) {
        int whole = clock.horizonMinutes();
        int endOfDay = dayOnly ? Math.min(whole, clock.minuteOf(clock.at(at).toLocalDate().plusDays(1).atStartOfDay(clock.zone())))
                : whole;
        if (text.isEmpty()) {
            return Optional.of(new Span(at, Math.max(at, endOfDay)));
        }
        if (text.startsWith("until ")) {
            var until = ClockText.minuteOfDay(text.substring("until ".length()));
            return until.map(minute -> atDay(at, minute)).filter(end -> end > at).map(end -> new Span(at, Math.min(whole, end)));
        }
        return ClockText.range(text).map(range -> new Span(Math.max(0, Math.min(whole, atDay(at, range.from()))),
                Math.max(0, Math.min(whole, atDay(at, range.until()))))).filter(span -> !span.isEmpty());
    }

    /** That minute of the day on which {@code at} lies. */
    private int atDay(int at, int minuteOfDay) {
        LocalDate day = clock.at(at).toLocalDate().plusDays(minuteOfDay / 1440);
        return clock.minuteOf(day.atTime(minuteOfDay % 1440 / 60, minuteOfDay % 60).atZone(clock.zone()));
    }

    private boolean holds(int minute) {
        return 0 <= minute && minute <= clock.horizonMinutes();
    }

    String show(int minute) {
        return SHOWN.format(clock.at(minute));
    }
}
