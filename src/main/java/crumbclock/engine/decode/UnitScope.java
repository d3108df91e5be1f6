package crumbclock.engine.decode;

import crumbclock.engine.model.Link;
import crumbclock.engine.model.Task;

/** Which tasks take part, which of them are placed together just now, and what is known of them within their unit. */
final class UnitScope {

    /** By task: −1 when it takes no part, else the number of the unit it was last placed with, 0 for none yet. */
    private final int[] stamps;
    /** Lower bounds on starts within the unit, by task. */
    private final int[] bounds;
    private int stamp;
    private Task[] members = {};
    private boolean tolerates;
    private long brokenMinutes;

    UnitScope(int taskCount) {
        stamps = new int[taskCount];
        bounds = new int[taskCount];
    }

    /** Before a decode: which tasks take part at all. */
    void begin(boolean[] active) {
        stamp = 0;
        brokenMinutes = 0;
        for (int task = 0; task < stamps.length; task++) {
            stamps[task] = active[task] ? 0 : -1;
        }
    }

    /** Back to a time in the decode when so many minutes were broken; no stamp is used twice. */
    void backTo(long minutes) {
        brokenMinutes = minutes;
    }

    /** Within a decode: whether a task takes part from now on. */
    void takePart(Task task, boolean takesPart) {
        stamps[task.index] = takesPart ? Math.max(0, stamps[task.index]) : -1;
    }

    /** These tasks are placed together from now on, none before its release. */
    void beginUnit(Task[] unitMembers, int[] release) {
        members = unitMembers;
        stamp++;
        for (Task task : members) {
            stamps[task.index] = stamp;
            bounds[task.index] = release[task.index];
        }
    }

    Task[] members() {
        return members;
    }

    int bound(Task task) {
        return bounds[task.index];
    }

    /** Bounds only grow while a unit is placed. */
    void raise(Task task, int bound) {
        bounds[task.index] = Math.max(bounds[task.index], bound);
    }

    boolean inUnit(Task task) {
        return stamps[task.index] == stamp;
    }

    /** Whether what takes it out is still to be placed; where that is recorded, the task's own end bounds say when. */
    boolean hasTaker(Task task) {
        for (Link link : task.after) {
            if (stamps[link.to().index] >= 0 && !link.to().fixed) {
                return true;
            }
        }
        return false;
    }

    boolean takenInUnit(Task task) {
        for (Link link : task.after) {
            if (inUnit(link.to())) {
                return true;
            }
        }
        return false;
    }

    /** Whether the end of {@code task} will be known before the unit is complete. */
    boolean endsInUnit(Task task) {
        return inUnit(task) && (!task.elastic || !hasTaker(task) || takenInUnit(task));
    }

    /** Whether tasks outside a unit that should start later are only counted. */
    void tolerate(boolean newTolerates) {
        tolerates = newTolerates;
    }

    boolean tolerates() {
        return tolerates;
    }

    /** Minutes by which tasks outside their units should have started later, since the decode began. */
    long brokenMinutes() {
        return brokenMinutes;
    }

    /** A task outside the unit cannot be moved any more: counts by how much it should be, where that is allowed. */
    boolean tolerated(Task task, int minutes) {
        if (!tolerates || inUnit(task)) {
            return false;
        }
        brokenMinutes += minutes;
        return true;
    }
}
