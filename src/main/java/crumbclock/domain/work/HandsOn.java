package crumbclock.domain.work;

/**
 * The work of a hands-on step.
 *
 * @param minutes     minutes at pace 1; 0 is allowed (a milestone needs no person and no time)
 * @param people      how many work together, at least 1; all of them for the same minutes: the slowest one's
 * @param skill       what each of them must be able to do; empty for anyone
 * @param workKind    kind of work, for pace and calm ("mixing", "coating"); empty for none
 * @param mayPutDown  whether it may be put down over breaks, nights and touches and picked up by the same person
 * @param away        whether the worker is out of the kitchen (a delivery)
 * @param finish      whether it belongs to the cake's finish, which one person should carry (wish W04)
 */
public record HandsOn(int minutes, int people, String skill, String workKind, boolean mayPutDown, boolean away,
        boolean finish) {

    /** No work at all: a moment that needs nobody. */
    public static final HandsOn NOTHING = new HandsOn(0, 1, "", "", false, false, false);
}
