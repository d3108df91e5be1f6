package crumbclock.domain.plan;

/** Which end of an unattended step a touch belongs to. */
public enum TouchEnd {
    PUT_IN, TAKE_OUT
}
