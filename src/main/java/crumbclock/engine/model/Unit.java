package crumbclock.engine.model;

/**
 * Tasks that are placed together because waits with a short range tie them.
 *
 * @param index   position in {@link Units#fine}
 * @param members in an order in which each comes after those it waits for
 * @param before  units that must be placed first
 * @param orders  orders that any member belongs to, ascending; for batches the orders that use them are not listed
 */
public record Unit(int index, Task[] members, int[] before, int[] orders) {
}
