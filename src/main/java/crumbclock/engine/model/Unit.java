package crumbclock.engine.model;

import java.util.Arrays;

/**
 * Tasks that are placed together because waits with a short range tie them.
 *
 * @param index   position in {@link Units#fine}
 * @param members in an order in which each comes after those it waits for
 * @param before  units that must be placed first
 * @param orders  orders that any member belongs to, ascending; for batches the orders that use them are not listed
 * @param serves  orders that use a batch among the members, ascending
 */
public record Unit(int index, Task[] members, int[] before, int[] orders, int[] serves) {

    /** Whether any member belongs to the order, or is a batch that it uses. */
    public boolean isFor(int order) {
        return holds(orders, order) || holds(serves, order);
    }

    private static boolean holds(int[] ascending, int order) {
        return Arrays.binarySearch(ascending, order) >= 0;
    }
}
