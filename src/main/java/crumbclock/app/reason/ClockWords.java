package crumbclock.app.reason;

import crumbclock.domain.problem.ProblemClock;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Minutes as the sentences say them. */
record ClockWords(ProblemClock clock) {

    private static final DateTimeFormatter DAY_TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    /** {@code Sat 10:00}. */
    String dayTime(int minute) {
        return DAY_TIME.format(clock.at(minute));
    }

    /** {@code 10:00}, with the weekday when it is another day than {@code seenFrom}. */
    String time(int seenFrom, int minute) {
        boolean sameDay = clock.at(seenFrom).toLocalDate().equals(clock.at(minute).toLocalDate());
        return sameDay ? TIME.format(clock.at(minute)) : dayTime(minute);
    }

    /** {@code 26 h 0 min}, {@code 45 min}; minutes at least 0. */
    static String duration(int minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
