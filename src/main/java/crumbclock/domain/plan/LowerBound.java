package crumbclock.domain.plan;

import java.util.List;

/**
 * What no sound plan of a problem can be better than, proven without making one. Each figure holds by itself; no plan need
 * reach any of them.
 *
 * @param medium      points for lateness and for orders that are not made; no sound plan has fewer
 * @param lateMinutes minutes late of all orders added up; no sound plan in which every order is made has fewer
 * @param endMinute   no sound plan in which every order is made has its last step end before this minute
 * @param allPossible false: proven that no sound plan makes every order
 * @param orders      one entry for each order, in the problem's order
 */
public record LowerBound(long medium, int lateMinutes, int endMinute, boolean allPossible, List<OrderBound> orders) {

    public LowerBound {
        orders = List.copyOf(orders);
    }

    /**
     * What holds for one order, whatever else waits for it.
     *
     * @param possible    false: proven that no sound plan makes it; then the minutes say nothing and are −1, and 0 late
     * @param readyMinute its last cake is not finished before this minute
     * @param handMinute  the moment of its hand-over is not before this minute
     * @param lateMinutes it is at least this late
     */
    public record OrderBound(String orderId, boolean possible, int readyMinute, int handMinute, int lateMinutes) {
    }
}
