package crumbclock.search;

import crumbclock.domain.problem.KeptStep;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** First orders of work, before any search: as people know it, where there is such a plan, and by what is due (or, backward, must be handed over last) first. */
final class StartOrders {

    private StartOrders() {
    }

    static List<int[]> of(CompiledProblem compiled) {
        int[] latest = latestStarts(compiled);
        List<int[]> orders = new ArrayList<>();
        if (!compiled.problem.kept().isNone()) {
            int[] known = knownStarts(compiled, latest);
            orders.add(sorted(compiled, Comparator.comparingInt(unit -> least(unit, task -> known[task.index]))));
        }
        orders.add(sorted(compiled, Comparator.comparingInt(unit -> least(unit, task -> latest[task.index]))));
        orders.add(sorted(compiled, Comparator.comparingInt(unit -> least(unit, task -> task.earliestStart))));
        orders.add(sorted(compiled, Comparator.comparingInt(unit -> least(unit, task -> due(compiled, task)))));
        return orders;
    }

    /**
     * A start order by chance. Half of them go by latest starts, each unit put off by up to an hour or two: what is
     * equally urgent then comes in ever new orders. The others take order after order, in an order by chance: whoever
     * comes first has all its slots before the next one.
     */
    static int[] random(CompiledProblem compiled, Random random) {
        int[] latest = latestStarts(compiled);
        int[] key = new int[compiled.units.fine.length];
        int range = 30 + random.nextInt(150);
        boolean orderByOrder = random.nextBoolean();
        int[] rank = ranks(compiled.orders.length, random);
        for (Unit unit : compiled.units.fine) {
            int urgency = least(unit, task -> latest[task.index]);
            key[unit.index()] = orderByOrder ? 2 * compiled.horizon * rank(unit, rank) + urgency
                    : urgency + random.nextInt(range);
        }
        return sorted(compiled, Comparator.comparingInt(unit -> key[unit.index()]));
    }

    private static int[] ranks(int count, Random random) {
        int[] rank = IntStream.range(0, count).toArray();
        for (int index = count - 1; index > 0; index--) {
            int other = random.nextInt(index + 1);
            int kept = rank[index];
            rank[index] = rank[other];
            rank[other] = kept;
        }
        return rank;
    }

    /** Rank of the first of a unit's orders, those that its batches serve included. */
    private static int rank(Unit unit, int[] rank) {
        int first = rank.length;
        for (int order : unit.orders()) {
            first = Math.min(first, rank[order]);
        }
        for (int order : unit.serves()) {
            first = Math.min(first, rank[order]);
        }
        return first;
    }

    private static int[] sorted(CompiledProblem compiled, Comparator<Unit> by) {
        return IntStream.range(0, compiled.units.fine.length).boxed()
                .sorted(Comparator.comparing((Integer index) -> compiled.units.fine[index], by)
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue).toArray();
    }

    private static int least(Unit unit, ToIntFunction<Task> minute) {
        int least = Integer.MAX_VALUE;
        for (Task task : unit.members()) {
            least = Math.min(least, minute.applyAsInt(task));
        }
        return least;
    }

    /** Abstract minute at which the most urgent order of a task is due, or, backward, begins. */
    private static int due(CompiledProblem compiled, Task task) {
        int due = compiled.horizon;
        int[] orders = task.order >= 0 ? new int[] {task.order} : compiled.ordersOfOwner[task.owner];
        for (int order : orders) {
            int until = compiled.orders[order].until();
            due = Math.min(due, compiled.mirrored ? compiled.horizon - until : until);
        }
        return due;
    }

    /** By task: when it begins in the plan that people have; what that plan does not know, when it must begin at the latest. */
    private static int[] knownStarts(CompiledProblem compiled, int[] latest) {
        Map<String, KeptStep> known = new HashMap<>();
        compiled.problem.kept().steps().forEach(step -> known.put(step.stepId(), step));
        int[] starts = latest.clone();
        for (Task task : compiled.tasks) {
            KeptStep step = known.get(task.step.id());
            if (step != null) {
                starts[task.index] = compiled.mirrored ? compiled.horizon - step.start() - length(task) : step.start();
            }
        }
        return starts;
    }

    /**
     * By task: when it must begin at the latest, by waits alone, for its orders to be in time; backward, for all to be
     * begun after the problem's start. What has a long way to go behind it comes early.
     */
    private static int[] latestStarts(CompiledProblem compiled) {
        int[] latest = new int[compiled.tasks.length];
        Task[] inOrder = compiled.units.inOrder(List.of(compiled.tasks));
        for (int index = inOrder.length - 1; index >= 0; index--) {
            Task task = inOrder[index];
            int end = compiled.mirrored ? compiled.horizon : due(compiled, task);
            for (Link link : task.after) {
                end = Math.min(end, latest[link.to().index] - link.least());
            }
            latest[task.index] = end - length(task);
        }
        return latest;
    }

    private static int length(Task task) {
        return !task.handsOn ? task.leastLength() : task.workerMinutes.length == 0 ? 0 : task.workerMinutes[0];
    }
}
