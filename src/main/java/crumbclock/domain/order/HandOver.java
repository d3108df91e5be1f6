package crumbclock.domain.order;

/**
 * When and how an order is handed over (rule R16).
 *
 * <p>The <em>moment</em> of hand-over is the start of {@code stepId} plus {@code offsetMinutes}; an order set aside
 * has no such step, and its moment is the latest end of its cakes' finish steps.
 *
 * @param stepId        the hand-over step; empty exactly for {@link HandOverWay#SET_ASIDE}
 * @param offsetMinutes from the step's start to the moment: 0 at the door; loading, road and setting up for a delivery
 * @param from          the moment is not before this minute (nobody comes to fetch it earlier)
 * @param until         a later moment is late
 */
public record HandOver(HandOverWay way, String stepId, int offsetMinutes, int from, int until) {

    public HandOver {
        if (stepId.isEmpty() != (way == HandOverWay.SET_ASIDE)) {
            throw new IllegalArgumentException("a hand-over step is needed exactly when somebody hands over: " + way);
        }
    }
}
