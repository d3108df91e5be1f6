package crumbclock.bench.kitchen;

import java.time.LocalDate;

/**
 * How large a made-up kitchen is, all from its number of cakes: enough of everything that all cakes can be on time by a
 * sensible plan, and not so much that any plan would do. The ratios are common practice, no source: a small shop of two
 * to five people hands over 6 to 30 cakes a week.
 *
 * @param cakes        to be made
 * @param handOverDays days on which cakes are handed over, the last days of the problem
 * @param leadDays     working days before the first of them
 */
public record ShopSize(int cakes, int handOverDays, int leadDays) {

    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
    /** Hands-on minutes of a cake of the usual mix, with touches and the hand-over. */
    private static final int MINUTES_A_CAKE = 95;
    /** Minutes of a shift without its break, and the share of them that is planned. */
    private static final double PLANNED_MINUTES_A_SHIFT = 450 * 0.6;

    public static ShopSize of(int cakes) {
        int days = cakes <= 8 ? 1 : cakes <= 30 ? 2 : cakes <= 90 ? 4 : cakes <= 250 ? 6 : Math.min(40, (cakes + 69) / 70);
        return new ShopSize(cakes, days, 2);
    }

    /** Few cakes: the end of a week, with Saturday the last day; many: from a Monday on. */
    LocalDate firstDay() {
        int days = leadDays + handOverDays;
        return days <= 6 ? MONDAY.plusDays(6 - days) : MONDAY;
    }

    int days() {
        return leadDays + handOverDays;
    }

    int people() {
        double shifts = cakes * MINUTES_A_CAKE / PLANNED_MINUTES_A_SHIFT;
        double workingDays = days() > 6 ? days() * 5 / 7.0 : days();
        return Math.max(2, (int) Math.ceil(shifts / workingDays));
    }

    private int cakesADay() {
        return Math.max(5, (cakes + days() - 2) / (days() - 1));
    }

    /** So many for each cake of a day, at least so many. */
    int each(double perCakeOfADay, int least) {
        return Math.max(least, (int) Math.ceil(cakesADay() * perCakeOfADay));
    }
}
