package crumbclock.app;

/** The program contradicts itself: no input should lead here, and no plan may be shown. */
public final class PlanFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    public PlanFault(String message) {
        super(message);
    }
}
