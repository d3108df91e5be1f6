package crumbclock.app.replan;

import crumbclock.domain.work.Wait;

/** When a stay ends that something takes out. */
final class Stays {

    private Stays() {
    }

    /** As planned, when the wait to the step that follows allows it; else as late as may be before that step. */
    static int end(int planned, int takerStart, Wait wait) {
        int latest = takerStart - Math.max(0, wait.leastMinutes());
        long earliest = wait.hasMost() ? (long) takerStart - wait.mostMinutes() : Integer.MIN_VALUE;
        return planned <= latest && planned >= earliest ? planned : latest;
    }
}
