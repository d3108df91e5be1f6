package crumbclock.domain.plan;

/**
 * What one wish, or lateness, cost.
 *
 * @param name    "lateness", or the wish's number
 * @param medium  whether it counts before all soft lines
 * @param points  at least 0
 * @param matches how many times
 */
public record CostLine(String name, String title, boolean medium, long points, int matches) {
}
