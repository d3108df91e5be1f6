package crumbclock.domain.promise;

import java.util.Optional;

/**
 * The earliest time that was found for one price, and until when it can be said yes to it.
 *
 * @param earliest  empty when no plan was found
 * @param notBefore minute of hand-over that no plan whatever can beat, proven; −1 when it is proven that there is none
 * @param lastYes   the plan that can be begun latest and still keeps {@code kept}; empty where {@code earliest} is
 * @param kept      minute of hand-over that {@code lastYes} keeps: the wished time where that is possible at this price, else the earliest
 */
public record Offer(Price price, Optional<PromisedPlan> earliest, int notBefore, Optional<PromisedPlan> lastYes, int kept) {

    /** Whether no plan can have it earlier. */
    public boolean isProven() {
        return earliest.isPresent() && earliest.get().own().handMinute() <= notBefore || earliest.isEmpty() && notBefore < 0;
    }
}
