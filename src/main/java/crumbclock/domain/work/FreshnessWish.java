package crumbclock.domain.work;

/**
 * Wish W02: from the end of a step to its order's hand-over no more than so many minutes; each minute more costs.
 */
public record FreshnessWish(String fromStepId, String orderId, int wishMinutes) {
}
