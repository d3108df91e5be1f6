package crumbclock.rules.fact;

/** When hands may work at all (rule R14). */
public record Opening(SpanSet minutes, int horizon) {
}
