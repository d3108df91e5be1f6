package crumbclock.domain.problem;

/**
 * What a worse plan costs, in points: the one table of all weights. A problem file may change each of them.
 *
 * @param lateMinute      medium, for each minute late × the order's importance
 * @param lateOrder       medium, for each order that is late at all
 * @param notPossible     medium, for each order that is not made × its importance; far above any lateness
 * @param bufferMinute    W01, for each minute that the buffer is shorter than wished
 * @param staleMinute     W02, for each minute beyond a freshness wish
 * @param spreadMinute    W03, for each minute from a person's first to last work of a day
 * @param oddHourMinute   W03, for each minute of hands-on work before {@code earlyBefore} or from {@code lateAfter} on
 * @param unevenMinute    W03, for each minute between the most and the least hands-on work of the people with a shift
 * @param workChange      W04, when a person goes on to another kind of work within a day
 * @param cakeChange      W04, when a person goes on to another cake or batch within a day
 * @param extraFinisher   W04, for each person beyond the first who works on one cake's finish
 * @param heatUp          W05, for each oven run
 * @param ovenMinute      W05, for each minute that an oven is on
 * @param behind          W06, for each item that goes in or comes out behind one that stands in front of it then
 * @param endMinute       W07, for each minute from the problem's start to the end of the last step
 * @param earlyBefore     minute of the day, 0 to 1440
 * @param lateAfter       minute of the day, 0 to 1440
 * @param movedMinute     W08, for each minute that a step of the kept plan moves, × how near in time it is
 * @param otherHands      W08, for each person who has to do what the kept plan had somebody else do, × how near in time
 */
public record Weights(int lateMinute, int lateOrder, int notPossible, int bufferMinute, int staleMinute,
        int spreadMinute, int oddHourMinute, int unevenMinute, int workChange, int cakeChange, int extraFinisher,
        int heatUp, int ovenMinute, int behind, int endMinute, int earlyBefore, int lateAfter,
        int movedMinute, int otherHands) {

    /** The weights that hold when a problem names none. */
    public static final Weights DEFAULT = new Weights(
            100, // the unit that everything is weighed against
            5_000, // a second order late costs as much as 50 more minutes on the first
            100_000_000, // never cheaper than being late, however late
            4, // a short buffer is what makes bakers nervous, but lateness is worse
            1, // an hour less fresh is noticed less than a quarter of an hour of buffer
            1, // a long day counts about as much as a stale cake
            3, // work before seven or after ten at night hurts
            0, // off: most kitchens have one or two people with unlike shifts
            5, // washing hands, fetching other tools
            3, // finding one's place again
            30, // handwriting and smoothing differ from hand to hand
            60, // a heat-up wastes about what an hour less buffer-wish would
            1, // energy, and somebody tied to the house
            15, // lifting one cake over another
            0, // off: batch days switch it on
            7 * 60, 22 * 60,
            2, // a moved step has to be told, and told again when it matters; twice a minute less fresh
            20); // handing work over takes longer than moving it by a few minutes

    /** Whether no wish costs anything but that all work ends early (W07). */
    public boolean onlyTheEnd() {
        return endMinute > 0 && bufferMinute + staleMinute + spreadMinute + oddHourMinute + unevenMinute + workChange + cakeChange
                + extraFinisher + heatUp + ovenMinute + behind + movedMinute + otherHands == 0;
    }
}
