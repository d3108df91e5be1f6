package crumbclock.search.model;

import crumbclock.domain.work.Wait;
import crumbclock.engine.model.CompiledProblem;
import java.util.Arrays;

/**
 * How a search goes about a problem. With several orders it is about who comes first, and on which evening. Where all work
 * belongs to one order, nothing is wished but that it ends early, and no wait has a most, it is a single project: what matters is the
 * chain of steps that holds up the end. Waits with a most are kept out because forward alone solves fewer of them (RCPSP/max).
 *
 * <p>The figures come from measurement; DEVELOPERS.md says on what.
 *
 * @param moves       how often which kind of move is made
 * @param fineness    points of the weight for one point of cost: room for telling equal costs apart
 * @param staleMinutes of the weakest wish that may be given up at first
 * @param stepShare   share of a mean step by which the end may be put off at first
 */
public record Tactics(Moves moves, int fineness, int staleMinutes, double stepShare) {

    /**
     * Out of a thousand moves; the rest are shifts of one unit.
     *
     * @param justified    everything as late as it can be, and then as early again (forward-backward improvement)
     * @param chained      a unit put right before, or behind, the one it waits for
     * @param byTime       the list put in the order of its timetable
     * @param ways         another way for an order
     * @param wholeOrders  all units of an order
     * @param exchanges    two units
     */
    public record Moves(int justified, int chained, int byTime, int ways, int wholeOrders, int exchanges) {

        /** Of so many moves. */
        public static final int OF = 1000;
    }

    /**
     * Shares of the budget. The first phases start afresh, because what a search settles early (which evening a cake is made) it
     * hardly changes later; the others go on from the best.
     */
    private static final int[] SHARES = {1, 1, 1, 1, 1, 1, 4, 8};
    private static final int FRESH_STARTS = 6;
    private static final int WHOLE = Arrays.stream(SHARES).sum();

    private static final Tactics ORDERS = new Tactics(new Moves(0, 0, 15, 60, 150, 150), 1, 120, 1);
    private static final Tactics PROJECT = new Tactics(new Moves(60, 300, 15, 0, 0, 0), 20, 0, 0.25);

    /** Those that suit the problem. */
    public static Tactics of(CompiledProblem compiled) {
        boolean project = compiled.orders.length == 1 && compiled.problem.weights().onlyTheEnd()
                && compiled.problem.waits().stream().noneMatch(Wait::hasMost);
        return project ? PROJECT : ORDERS;
    }

    /** Whether all is one project: backward it would only end at the horizon. */
    public boolean forwardOnly() {
        return this == PROJECT;
    }

    /** How many phases a search has. */
    public static int phases() {
        return SHARES.length;
    }

    /** A phase's share of a budget; at least 1. */
    public static long share(long budget, int phase) {
        return Math.max(1, part(budget, SHARES[phase], WHOLE));
    }

    /** Moves that make so many timetables: one that pushes all steps back and forth takes a timetable more. */
    public long movesFor(long timetables) {
        return part(timetables, Moves.OF, Moves.OF + moves.justified());
    }

    /** {@code of × share / whole}, rounded down, also where the product is more than a long holds. */
    private static long part(long of, int share, int whole) {
        return of / whole * share + of % whole * share / whole;
    }

    /** Whether a phase goes on from the best plan; before that, it is too early to compare directions. */
    public static boolean goesOn(int phase) {
        return phase >= FRESH_STARTS;
    }
}
