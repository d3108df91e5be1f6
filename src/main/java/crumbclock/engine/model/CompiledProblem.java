package crumbclock.engine.model;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.problem.Problem;
import crumbclock.units.Span;
import java.util.List;

/**
 * A problem compiled for one direction. Immutable once made, shared by all decoders of that direction.
 */
public final class CompiledProblem {

    public final Problem problem;
    public final boolean mirrored;
    public final int horizon;
    public final Task[] tasks;
    public final Need[] needs;
    public final CompiledOrder[] orders;
    /** For each batch, by its owner number: the orders that use it; empty for owners that are no batch. */
    public final int[][] ordersOfOwner;
    public final Spot[] spots;
    /** Calendar days in real time. */
    public final List<Span> days;
    /** Index of the calendar day, by abstract minute. */
    public final int[] dayOf;
    public final Units units;
    /** Whether any task must be free from anything; otherwise allergens need no look. */
    public final boolean hasFreeFrom;
    private final Limit[][] limitsOf;
    private final FullCleans[] fullCleans;

    CompiledProblem(Compiler compiler) {
        problem = compiler.problem;
        mirrored = compiler.mirrored;
        horizon = compiler.horizon;
        tasks = compiler.tasks;
        needs = compiler.needs.toArray(new Need[0]);
        orders = compiler.orders;
        ordersOfOwner = compiler.ordersOfOwner;
        spots = compiler.spots;
        days = problem.clock().days();
        dayOf = compiler.dayOf();
        hasFreeFrom = compiler.hasFreeFrom;
        limitsOf = compiler.limitsOf;
        fullCleans = kitchen().pools().stream().map(pool -> new FullCleans(pool, compiler.allergens()))
                .toArray(FullCleans[]::new);
        units = new Units(tasks, orders.length, ordersOfOwner);
    }

    /** Compiles {@code problem}; the backward direction mirrors time at the horizon. */
    public static CompiledProblem of(Problem problem, boolean mirrored) {
        return new CompiledProblem(new Compiler(problem, mirrored));
    }

    /** Limits of rule R12 whose way begins or ends at {@code task}. */
    public Limit[] limitsOf(Task task) {
        return limitsOf[task.index];
    }

    /** Full cleans of the pieces of a pool, by the pool's index. */
    public FullCleans fullCleans(int pool) {
        return fullCleans[pool];
    }

    public Kitchen kitchen() {
        return problem.kitchen();
    }

    /** Abstract span of a real one, or the other way round. */
    public Span mirror(Span span) {
        return mirrored ? new Span(horizon - span.end(), horizon - span.start()) : span;
    }

    /** Real start of what occupies {@code [start, end)} in abstract time. */
    public int realStart(int start, int end) {
        return mirrored ? horizon - end : start;
    }

    /** Real end of what occupies {@code [start, end)} in abstract time. */
    public int realEnd(int start, int end) {
        return mirrored ? horizon - start : end;
    }

    /** One bit a minute in abstract time for real spans; what lies outside the horizon is cut off. */
    public long[] calendar(List<Span> spans) {
        long[] bits = Bits.ofSize(horizon + 1);
        for (Span span : spans) {
            int start = Math.max(0, span.start());
            int end = Math.min(horizon, span.end());
            if (start < end) {
                Bits.set(bits, mirrored ? horizon - end : start, mirrored ? horizon - start : end);
            }
        }
        return bits;
    }
}
