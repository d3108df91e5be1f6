package crumbclock.domain.pace;

import java.time.ZonedDateTime;

/**
 * A recorded step that is not reckoned with.
 *
 * @param from   when it was begun
 * @param until  when it was over; equal to {@code from} when nobody wrote that down
 * @param reason why, as the end of a sentence
 */
public record LeftOut(String stepId, ZonedDateTime from, ZonedDateTime until, String reason) {
}
