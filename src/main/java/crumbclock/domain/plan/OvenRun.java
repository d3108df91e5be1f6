package crumbclock.domain.plan;

/**
 * A stretch in which a cavity is on at one temperature: heating up or changing in {@code [from, readyAt)}, ready in
 * {@code [readyAt, until)}. A run that begins when another ends is a change of temperature with the oven left on;
 * any other run starts from cold.
 */
public record OvenRun(String cavityId, int temperatureC, int from, int readyAt, int until) {
}
