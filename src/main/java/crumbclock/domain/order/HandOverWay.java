package crumbclock.domain.order;

/** How an order leaves: fetched at the door, brought by somebody, or set aside ready (drivers fetch all at once). */
public enum HandOverWay {
    PICK_UP, DELIVERY, SET_ASIDE
}
