package crumbclock.engine.model;

/**
 * Tightens earliest starts by waits alone: a least wait pushes the later task, a most wait pulls the earlier one
 * after it (a cake that may be held for 36 hours only need not be begun on Wednesday for Saturday). What follows from
 * hands and ovens is found while decoding.
 */
final class Bounds {

    private final Task[] tasks;
    private final int horizon;

    Bounds(Task[] tasks, int horizon) {
        this.tasks = tasks;
        this.horizon = horizon;
    }

    void tighten() {
        boolean changed = true;
        // a cycle without an end would be a contradiction in the waits; then bounds pass the horizon and we stop
        for (int round = 0; changed && round <= tasks.length; round++) {
            changed = false;
            for (Task task : tasks) {
                changed |= tighten(task);
            }
        }
    }

    private boolean tighten(Task task) {
        boolean changed = false;
        if (task.earliestStart + shortest(task) < task.earliestEnd && longest(task) != Integer.MAX_VALUE) {
            changed |= raise(task, task.earliestEnd - longest(task));
        }
        for (Link link : task.after) {
            changed |= raise(link.to(), task.earliestStart + shortest(task) + link.least());
            if (link.hasMost() && longest(task) != Integer.MAX_VALUE) {
                changed |= raise(task, link.to().earliestStart - link.most() - longest(task));
            }
        }
        return changed;
    }

    private boolean raise(Task task, int start) {
        int bound = Math.min(start, horizon);
        if (bound <= task.earliestStart) {
            return false;
        }
        task.earliestStart = bound;
        return true;
    }

    private static int shortest(Task task) {
        if (!task.handsOn) {
            return task.leastLength();
        }
        int shortest = task.works ? Integer.MAX_VALUE : 0;
        for (int minutes : task.workerMinutes) {
            shortest = Math.min(shortest, minutes);
        }
        return shortest == Integer.MAX_VALUE ? 0 : shortest;
    }

    private static int longest(Task task) {
        if (!task.handsOn) {
            return task.elastic || task.bakes ? task.mostLength() : task.leastLength();
        }
        if (task.works && task.mayPutDown) {
            return Integer.MAX_VALUE;
        }
        int longest = 0;
        for (int minutes : task.workerMinutes) {
            longest = Math.max(longest, minutes);
        }
        return longest;
    }
}
