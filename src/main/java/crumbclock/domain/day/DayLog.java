package crumbclock.domain.day;

import java.util.List;

/**
 * A day file, read.
 *
 * @param steps   in the order in which they happened; lines of equal time, or without one, as they stand in the file
 * @param kitchen as they stand in the file
 * @param notes   what had to be assumed while reading
 */
public record DayLog(List<StepEvent> steps, List<KitchenEvent> kitchen, List<DayNote> notes) {

    /** All goes as planned. */
    public static final DayLog NOTHING = new DayLog(List.of(), List.of(), List.of());

    public DayLog {
        steps = List.copyOf(steps);
        kitchen = List.copyOf(kitchen);
        notes = List.copyOf(notes);
    }
}
