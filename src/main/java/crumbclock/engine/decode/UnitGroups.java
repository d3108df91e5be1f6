package crumbclock.engine.decode;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import java.util.ArrayList;
import java.util.List;

/** Which tasks are placed at once: those of a unit, or of all open units of an order that is placed as a whole. */
final class UnitGroups {

    private final CompiledProblem compiled;
    private final int[] way;
    private final boolean[] done;

    /** @param way by order, as the decoder has it at any time */
    UnitGroups(CompiledProblem compiled, int[] way) {
        this.compiled = compiled;
        this.way = way;
        done = new boolean[compiled.units.fine.length];
    }

    /** By unit: whether it is placed. Kept up to date by whoever places units. */
    boolean[] done() {
        return done;
    }

    /** The unit's own members; with all other open units of its orders, where an order is placed as a whole. */
    Task[] members(int index) {
        Unit unit = compiled.units.fine[index];
        boolean together = false;
        for (int order : unit.orders()) {
            together |= isTogether(order);
        }
        if (!together) {
            return unit.members();
        }
        boolean[] taken = new boolean[done.length];
        List<Unit> group = new ArrayList<>();
        take(index, taken, group);
        // orders that share a bowl, and are both placed as a whole, are placed together
        for (int next = 0; next < group.size(); next++) {
            for (int order : group.get(next).orders()) {
                if (isTogether(order)) {
                    for (int other : compiled.units.unitsOfOrder[order]) {
                        take(other, taken, group);
                    }
                }
            }
        }
        List<Task> members = new ArrayList<>();
        group.forEach(part -> members.addAll(List.of(part.members())));
        return compiled.units.inOrder(members);
    }

    private boolean isTogether(int order) {
        return way[order] == Decoder.TOGETHER || way[order] == Decoder.BUFFERED_TOGETHER;
    }

    private void take(int unit, boolean[] taken, List<Unit> group) {
        if (!taken[unit] && !done[unit]) {
            taken[unit] = true;
            group.add(compiled.units.fine[unit]);
        }
    }
}
