package crumbclock.domain.plan;

import java.util.List;

/**
 * What becomes of one order.
 *
 * @param possible      false: none of its steps is in the plan, and {@code reasons} says why
 * @param readyMinute   latest end of its cakes' finish steps; −1 when not possible
 * @param handMinute    moment of hand-over ({@code HandOver}); −1 when not possible
 * @param bufferMinutes from ready to the start of the hand-over step, or to {@code until} when set aside
 * @param lateMinutes   how much after {@code until} the moment is, at least 0
 * @param reasons       for an order that is late or not possible: each independent cause; for an order on time only what
 *                      would stand between it and one that is not
 * @param waitsFor      what decides its time: ids of the steps without slack, from first to last, other orders' among them
 */
public record Outcome(String orderId, boolean possible, int readyMinute, int handMinute, int bufferMinutes,
        int lateMinutes, List<Reason> reasons, List<String> waitsFor) {

    public Outcome {
        reasons = List.copyOf(reasons);
        waitsFor = List.copyOf(waitsFor);
    }

    /** The same, explained otherwise. */
    public Outcome explained(List<Reason> otherReasons, List<String> otherWaitsFor) {
        return new Outcome(orderId, possible, readyMinute, handMinute, bufferMinutes, lateMinutes, otherReasons, otherWaitsFor);
    }

    /** The rule in the way, and a sentence that says how. */
    public record Reason(Rule rule, String message) {
    }
}
