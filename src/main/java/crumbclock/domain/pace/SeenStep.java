package crumbclock.domain.pace;

import java.time.ZonedDateTime;

/**
 * A step whose beginning and end somebody wrote down.
 *
 * @param stepName       what people call it
 * @param personId       who worked on it, as the plan has it; empty when nobody did, or several together
 * @param workKind       kind of work; empty for none
 * @param from           when it was begun
 * @param until          when it was done
 * @param plainMinutes   minutes of work at pace 1; 0 when nobody works on it
 * @param plannedMinutes minutes that the plan had for it
 * @param realMinutes    minutes that it took, at least 1: breaks and nights over which it was put down left out
 */
public record SeenStep(String stepId, String stepName, String personId, String workKind, ZonedDateTime from, ZonedDateTime until,
        int plainMinutes, int plannedMinutes, int realMinutes) {

    /** The clock is read by the minute: in less work than this, one minute of reading decides too much. */
    public static final int LEAST_MINUTES = 5;

    /** Whether it says something about a person's pace. */
    public boolean tellsPace() {
        return !personId.isEmpty() && !workKind.isEmpty() && plainMinutes >= LEAST_MINUTES;
    }

    /** How often the minutes at pace 1 go into the real ones; only for a step that {@link #tellsPace}. */
    public double pace() {
        return (double) realMinutes / plainMinutes;
    }

    /** How often the planned minutes go into the real ones. */
    public double timesPlanned() {
        return (double) realMinutes / plannedMinutes;
    }
}
