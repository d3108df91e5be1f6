package crumbclock.domain.promise;

import crumbclock.domain.plan.Outcome;

/**
 * What one more order does to another one.
 *
 * @param before     in the plan that people have
 * @param after      beside the new order
 * @param bufferWish buffer that the order wishes, minutes
 * @param moved      steps that begin at another time than people know
 * @param mostMoved  minutes by which the one that moves furthest moves
 */
public record OrderEffect(String orderId, Outcome before, Outcome after, int bufferWish, int moved, int mostMoved) {

    public boolean isLater() {
        return before.possible() && (!after.possible() || after.lateMinutes() > before.lateMinutes());
    }

    public boolean hasLessBuffer() {
        return before.possible() && after.possible() && after.bufferMinutes() < before.bufferMinutes();
    }

    /** Whether its buffer shrinks, and below what it wishes. */
    public boolean isBelowWish() {
        return hasLessBuffer() && after.bufferMinutes() < bufferWish;
    }

    public boolean isWorse() {
        return isLater() || hasLessBuffer();
    }
}
