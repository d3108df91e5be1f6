package crumbclock.methods;

/**
 * Time between two steps.
 *
 * @param leastMinutes at least this long, 0 by default
 * @param mostMinutes  and at most; null for no limit
 */
public record WaitTemplate(int leastMinutes, Integer mostMinutes) {
}
