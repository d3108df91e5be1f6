package crumbclock.bound;

import java.util.ArrayDeque;
import java.util.Arrays;

/**
 * The earliest start and end that waits and rooms leave each task of a net. Bounds only grow, and each one reached holds,
 * so it may stop at any time; a task that would have to end after the horizon shows that its tasks cannot all be.
 */
final class Heads {

    /** How often a task is looked at, on average, before it is good enough. */
    private static final int ROUNDS = 60;

    final int[] start;
    final int[] end;

    private final Net net;
    private final boolean[] in;
    private final ArrayDeque<Integer> open = new ArrayDeque<>();
    private final boolean[] queued;
    private boolean contradiction;
    private boolean changed;

    /** @param in the tasks that count; waits to others do not */
    Heads(Net net, boolean[] in) {
        this.net = net;
        this.in = in;
        start = net.firstStart.clone();
        end = net.firstEnd.clone();
        queued = new boolean[net.size()];
        for (int task = 0; task < net.size(); task++) {
            if (in[task]) {
                queue(task);
            }
        }
    }

    /** Another that goes on from here; what it finds does not come back. */
    Heads(Heads other) {
        net = other.net;
        in = other.in;
        start = other.start.clone();
        end = other.end.clone();
        queued = other.queued.clone();
        open.addAll(other.open);
        contradiction = other.contradiction;
    }

    void raiseStart(int task, int minute) {
        if (in[task] && !net.fixed[task] && minute > start[task]) {
            start[task] = minute;
            queue(task);
        }
    }

    void raiseEnd(int task, int minute) {
        if (in[task] && !net.fixed[task] && minute > end[task]) {
            end[task] = minute;
            queue(task);
        }
    }

    /** Whether anything grew since this was asked last. */
    boolean hasChanged() {
        boolean answer = changed;
        changed = false;
        return answer;
    }

    private void queue(int task) {
        changed = true;
        if (!queued[task]) {
            queued[task] = true;
            open.add(task);
        }
    }

    /** @return false when it is proven that these tasks cannot all be in a plan */
    boolean settle() {
        long most = (long) ROUNDS * net.size() + 1000;
        while (!open.isEmpty() && !contradiction && most-- > 0) {
            int task = open.poll();
            queued[task] = false;
            settle(task);
            if (contradiction) {
                Arrays.fill(queued, false);
                open.clear();
                return false;
            }
            pass(task);
        }
        return !contradiction;
    }

    private void settle(int task) {
        if (net.fixed[task]) {
            return;
        }
        Room room = net.rooms[task];
        boolean again = true;
        while (again) {
            again = false;
            start[task] = room.startFrom(start[task], net.horizon);
            end[task] = room.endFrom(Math.max(end[task], room.earliestEnd(start[task])), net.horizon);
            if (end[task] > net.horizon) {
                contradiction = true;
            } else if (room.longest() != Integer.MAX_VALUE && start[task] < end[task] - room.longest()) {
                start[task] = end[task] - room.longest();
                again = true;
            }
        }
    }

    private void pass(int task) {
        for (int wait : net.after[task]) {
            raiseStart(net.to[wait], end[task] + net.least[wait]);
        }
        for (int wait : net.before[task]) {
            if (net.most[wait] != Integer.MAX_VALUE) {
                raiseEnd(net.from[wait], start[task] - net.most[wait]);
            }
        }
    }
}
