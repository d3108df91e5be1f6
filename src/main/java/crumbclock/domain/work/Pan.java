package crumbclock.domain.work;

/** One pan in the oven, by its outside measures. */
public record Pan(Footprint footprint, int heightMm) {
}
