package crumbclock.engine.decode;

import crumbclock.engine.model.Task;

/**
 * Places the members of a unit together: forward through the members, back to one that must start later, until all
 * have a place. Bounds only grow, so it ends; and it gives up after so many steps back.
 */
final class UnitPlacer {

    /** Steps back before the unit counts as impossible, for each member and in all: kitchens need a few, a contradiction needs all. */
    private static final int STEPS_BACK_A_MEMBER = 200;
    private static final int MOST_STEPS_BACK = 3_000;

    private final Board board;
    private final Obstacle obstacle;
    private final TaskPlacer placer;
    private final UnitScope scope;
    private final int[] position;
    private int[] marks = new int[64];

    UnitPlacer(Board board, Obstacle obstacle) {
        this.board = board;
        this.obstacle = obstacle;
        int count = board.compiled.tasks.length;
        scope = new UnitScope(count);
        position = new int[count];
        placer = new TaskPlacer(board, obstacle, scope);
    }

    /** Whether tasks outside a unit that should start later are only counted ({@link #brokenMinutes}). */
    void tolerate(boolean tolerates) {
        scope.tolerate(tolerates);
    }

    /** Minutes by which tasks outside their units should have started later, since the decode began. */
    long brokenMinutes() {
        return scope.brokenMinutes();
    }

    /** Back to a time in the decode when so many minutes were broken. */
    void backTo(long brokenMinutes) {
        scope.backTo(brokenMinutes);
    }

    /** Within a decode: whether a task takes part from now on. */
    void takePart(Task task, boolean takesPart) {
        scope.takePart(task, takesPart);
    }

    /** Before a decode: which tasks take part at all. */
    void begin(boolean[] active) {
        scope.begin(active);
    }

    /**
     * Places all {@code members}, or none.
     *
     * @param release earliest start of each task, by task index
     * @return {@link Outcome#RAISE} when a task outside must start later
     */
    Outcome place(Task[] members, int[] release) {
        scope.beginUnit(members, release);
        for (int index = 0; index < members.length; index++) {
            position[members[index].index] = index;
        }
        if (marks.length < members.length) {
            marks = new int[2 * members.length];
        }
        int begin = board.journal.mark();
        int stepsLeft = Math.min(MOST_STEPS_BACK, STEPS_BACK_A_MEMBER * members.length);
        int index = 0;
        while (index < members.length) {
            Task task = members[index];
            marks[index] = board.journal.mark();
            Outcome outcome = placer.place(task, scope.bound(task));
            if (outcome == Outcome.PLACED) {
                index++;
                continue;
            }
            if (outcome == Outcome.RAISE && scope.inUnit(obstacle.task) && stepsLeft-- > 0) {
                Task raised = obstacle.task;
                scope.raise(raised, Math.max(board.start[raised.index] + 1, obstacle.minute));
                index = position[raised.index];
                board.journal.undoTo(marks[index]);
                continue;
            }
            board.journal.undoTo(begin);
            boolean outside = outcome == Outcome.RAISE && !scope.inUnit(obstacle.task) && !obstacle.task.fixed;
            if (outcome == Outcome.RAISE && !outside) {
                obstacle.task = task;
            }
            return outside ? Outcome.RAISE : Outcome.NEVER;
        }
        return Outcome.PLACED;
    }

    /** Members of a unit that still take part and are not placed yet. */
    Task[] open(Task[] members, boolean[] active) {
        int count = 0;
        for (Task task : members) {
            count += active[task.index] && !board.placed[task.index] ? 1 : 0;
        }
        if (count == members.length) {
            return members;
        }
        Task[] left = new Task[count];
        int at = 0;
        for (Task task : members) {
            if (active[task.index] && !board.placed[task.index]) {
                left[at++] = task;
            }
        }
        return left;
    }
}
