package crumbclock.domain.day;

/**
 * Something that a day file leaves open or contradicts, and what was assumed.
 *
 * @param line 1-based line of the file; 0 for the file as a whole
 */
public record DayNote(int line, String message) {
}
