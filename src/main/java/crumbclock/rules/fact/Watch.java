package crumbclock.rules.fact;

/**
 * When at least one person is in the kitchen: inside a shift, breaks included, and not away on a delivery (rule R05).
 */
public record Watch(SpanSet minutes) {
}
