package crumbclock.bound;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.FixedStep;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Tasks with their rooms and waits, in one direction of time. The mirrored net has each minute {@code t} as
 * {@code horizon − t} and ends where starts were, so that what finds earliest times finds latest ones there.
 */
final class Net {

    final int horizon;
    final Room[] rooms;
    /** Recorded (rule R15): nothing moves it. */
    final boolean[] fixed;
    /** Least start of each task before anything is reckoned; for a recorded one its start. */
    final int[] firstStart;
    /** End of recorded tasks, 0 for others. */
    final int[] firstEnd;
    /** Waits, one entry each: {@code start(to) − end(from)} lies between least and most. */
    final int[] from;
    final int[] to;
    final int[] least;
    final int[] most;
    /** By task: the waits that begin and end there. */
    final int[][] after;
    final int[][] before;

    private Net(int horizon, Room[] rooms, boolean[] fixed, int[] firstStart, int[] firstEnd, int[][] waits) {
        this.horizon = horizon;
        this.rooms = rooms;
        this.fixed = fixed;
        this.firstStart = firstStart;
        this.firstEnd = firstEnd;
        from = waits[0];
        to = waits[1];
        least = waits[2];
        most = waits[3];
        after = byTask(from);
        before = byTask(to);
    }

    /** @param compiled forward */
    static Net of(CompiledProblem compiled, Room[] rooms) {
        int size = compiled.tasks.length;
        int[] firstStart = new int[size];
        Map<String, Integer> byId = new HashMap<>();
        for (Task task : compiled.tasks) {
            firstStart[task.index] = Math.max(0, task.step.earliest());
            byId.put(task.step.id(), task.index);
        }
        for (CompiledOrder order : compiled.orders) {
            if (order.handOver() != null) {
                int door = order.handOver().index;
                firstStart[door] = Math.max(firstStart[door], order.earliestStart());
            }
        }
        boolean[] fixed = new boolean[size];
        int[] firstEnd = new int[size];
        for (FixedStep one : compiled.problem.fixedSteps()) {
            PlacedStep step = one.step();
            Integer task = byId.get(step.stepId());
            if (task != null) {
                fixed[task] = true;
                firstStart[task] = step.start();
                firstEnd[task] = step.end();
            }
        }
        int[][] waits = Arrays.stream(compiled.tasks).flatMap(task -> Arrays.stream(task.after)).map(Net::numbers)
                .toArray(int[][]::new);
        return new Net(compiled.horizon, rooms, fixed, firstStart, firstEnd, columns(waits));
    }

    private static int[] numbers(Link link) {
        return new int[] {link.from().index, link.to().index, link.least(), link.most()};
    }

    private static int[][] columns(int[][] rows) {
        int[][] columns = new int[4][rows.length];
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < 4; column++) {
                columns[column][row] = rows[row][column];
            }
        }
        return columns;
    }

    private int[][] byTask(int[] ends) {
        int[] counts = new int[rooms.length];
        for (int task : ends) {
            counts[task]++;
        }
        int[][] lists = new int[rooms.length][];
        for (int task = 0; task < lists.length; task++) {
            lists[task] = new int[counts[task]];
        }
        for (int wait = ends.length - 1; wait >= 0; wait--) {
            lists[ends[wait]][--counts[ends[wait]]] = wait;
        }
        return lists;
    }

    int size() {
        return rooms.length;
    }

    Net mirrored() {
        int[] start = new int[size()];
        int[] end = new int[size()];
        Map<Room, Room> turned = new IdentityHashMap<>();
        Room[] mirrored = new Room[size()];
        for (int task = 0; task < size(); task++) {
            mirrored[task] = turned.computeIfAbsent(rooms[task], room -> room.mirrored(horizon));
            if (fixed[task]) {
                start[task] = horizon - firstEnd[task];
                end[task] = horizon - firstStart[task];
            }
        }
        return new Net(horizon, mirrored, fixed, start, end, new int[][] {to, from, least, most});
    }
}
