package crumbclock.domain.compare;

import java.util.OptionalLong;

/**
 * One value of a row.
 *
 * @param value        missing where there is nothing to measure
 * @param note         what it belongs to, such as a shelf and a time; may be empty
 * @param withinChance it differs from the base's value, but by no more than another seed would make the base differ
 */
public record Cell(OptionalLong value, String note, Mark mark, boolean withinChance) {

    public static Cell of(long value, String note) {
        return new Cell(OptionalLong.of(value), note, Mark.NONE, false);
    }

    public static Cell none() {
        return new Cell(OptionalLong.empty(), "", Mark.NONE, false);
    }
}
