package crumbclock.domain.work;

/**
 * The short hands-on moment at one end of an unattended step; lies inside the step's span.
 *
 * @param minutes at least 1, never scaled by pace
 * @param skill   what the person must be able to do; empty for anyone
 */
public record Touch(int minutes, String skill) {
}
