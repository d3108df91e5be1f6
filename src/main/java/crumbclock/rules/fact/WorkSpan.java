package crumbclock.rules.fact;

import crumbclock.domain.work.HandsOn;
import crumbclock.units.Span;

/**
 * One stretch in which one person works on one hands-on step.
 *
 * @param no  unlike that of every other stretch; orders pairs
 * @param day number of the calendar day in which it starts, −1 when it starts outside the problem's days
 */
public record WorkSpan(int no, String stepId, String ownerId, HandsOn work, String personId, Span span, int day) {

    public int start() {
        return span.start();
    }

    public int end() {
        return span.end();
    }

    /** Whether the person can do nothing else meanwhile, not even a touch (rule R04). */
    public boolean isSolid() {
        return !work.mayPutDown() || work.away();
    }
}
