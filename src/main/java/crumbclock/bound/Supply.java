package crumbclock.bound;

/** What there is of something, minute by minute. */
interface Supply {

    /** What there is in {@code [from, until)} in all; {@code until} may lie after the horizon. */
    long in(int from, int until);

    /**
     * @param perMinute what there is in each minute up to the horizon
     * @param after     what there is in each minute after it
     */
    static Supply of(long[] perMinute, long after) {
        long[] before = new long[perMinute.length + 1];
        for (int minute = 0; minute < perMinute.length; minute++) {
            before[minute + 1] = before[minute] + perMinute[minute];
        }
        return (from, until) -> before(before, after, until) - before(before, after, from);
    }

    private static long before(long[] before, long after, int moment) {
        int last = before.length - 1;
        return moment <= last ? before[Math.max(0, moment)] : before[last] + after * (moment - last);
    }
}
