package crumbclock.domain.request;

import crumbclock.domain.order.HandOverWay;
import java.util.List;

/**
 * One order as asked for; all times in minutes from the problem's start.
 *
 * @param from             hand-over not before
 * @param until            hand-over late after this; equal to {@code from} for a fixed time
 * @param doorMinutes      pick-up: hands-on minutes at the door
 * @param loadMinutes      delivery: loading the car
 * @param roadMinutes      delivery: one way; the way back takes as long
 * @param setUpMinutes     delivery: on site; done by {@code until}
 * @param earliest         no step of its cakes before this minute (ingredients arrive)
 */
public record OrderRequest(String id, String title, List<CakeRequest> cakes, HandOverWay way, int from, int until,
        int doorMinutes, int loadMinutes, int roadMinutes, int setUpMinutes, int importance, int earliest,
        int bufferWishMinutes) {

    public OrderRequest {
        cakes = List.copyOf(cakes);
    }
}
