package crumbclock.search;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** First orders of work, before any search: by what is due (or, backward, must be handed over last) first. */
final class StartOrders {

    private StartOrders() {
    }

    static List<int[]> of(CompiledProblem compiled) {
        List<int[]> orders = new ArrayList<>();
        orders.add(sorted(compiled, Comparator.comparingInt(unit -> due(compiled, unit))));
        orders.add(sorted(compiled, Comparator.comparingInt(unit -> earliest(unit))));
        orders.add(sorted(compiled, Comparator.comparingInt((Unit unit) -> due(compiled, unit) - work(compiled, unit))));
        return orders;
    }

    private static int[] sorted(CompiledProblem compiled, Comparator<Unit> by) {
        return IntStream.range(0, compiled.units.fine.length).boxed()
                .sorted(Comparator.comparing((Integer index) -> compiled.units.fine[index], by)
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue).toArray();
    }

    /** Abstract minute at which the unit's most urgent order is due, or, backward, begins. */
    private static int due(CompiledProblem compiled, Unit unit) {
        int due = Integer.MAX_VALUE;
        for (Task task : unit.members()) {
            int[] orders = task.order >= 0 ? new int[] {task.order} : compiled.ordersOfOwner[task.owner];
            for (int order : orders) {
                int until = compiled.orders[order].until();
                due = Math.min(due, compiled.mirrored ? compiled.horizon - until : until);
            }
        }
        return due;
    }

    private static int earliest(Unit unit) {
        int earliest = Integer.MAX_VALUE;
        for (Task task : unit.members()) {
            earliest = Math.min(earliest, task.earliestStart);
        }
        return earliest;
    }

    /** Least minutes of all steps of the unit's orders: long chains first among those due at the same time. */
    private static int work(CompiledProblem compiled, Unit unit) {
        int work = 0;
        for (Task task : compiled.tasks) {
            for (int order : unit.orders()) {
                if (task.order == order) {
                    work += task.handsOn ? (task.workerMinutes.length == 0 ? 0 : task.workerMinutes[0]) : task.leastLength();
                }
            }
        }
        return work;
    }
}
