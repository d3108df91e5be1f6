package crumbclock.domain.day;

import java.util.List;

/**
 * A line about steps of a cake or batch.
 *
 * @param line    1-based line of the file
 * @param minute  from the problem's start; {@link #NO_TIME} when the line has none
 * @param stepIds at least one
 * @param minutes for {@link DayWord#SLOWER}; otherwise 0
 */
public record StepEvent(int line, int minute, List<String> stepIds, DayWord word, int minutes) {

    /** The line says no time. */
    public static final int NO_TIME = -1;

    public StepEvent {
        stepIds = List.copyOf(stepIds);
    }

    public boolean isTimed() {
        return minute != NO_TIME;
    }
}
