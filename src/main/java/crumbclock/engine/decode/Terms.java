package crumbclock.engine.decode;

import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.Arrays;

/** On what terms a decode places orders and tasks: each order's way, which tasks take part, and how early each may begin. */
final class Terms {

    private final CompiledProblem compiled;
    /** By order. */
    private final int[] ways;
    /** By task: the bounds put on it while decoding, or before; with the buffers of orders they make {@link #release}. */
    private final int[] bounds;
    private final boolean[] active;
    private final int[] release;

    Terms(CompiledProblem compiled) {
        this.compiled = compiled;
        ways = new int[compiled.orders.length];
        bounds = new int[compiled.tasks.length];
        active = new boolean[compiled.tasks.length];
        release = new int[compiled.tasks.length];
    }

    /** By order, as it stands at any time. */
    int[] ways() {
        return ways;
    }

    /** By task, whether it takes part; as it stands at any time. */
    boolean[] active() {
        return active;
    }

    /** By task, its earliest abstract start; as it stands at any time. */
    int[] release() {
        return release;
    }

    /** By task, as it stands at any time. */
    int[] bounds() {
        return bounds;
    }

    boolean isLeftOut(int order) {
        return ways[order] == Decoder.LEFT_OUT;
    }

    /** The next way for an order that is not left out. */
    void giveWay(int order) {
        ways[order]++;
    }

    boolean isBound(Task task) {
        return bounds[task.index] > 0;
    }

    void letGo(Task task) {
        bounds[task.index] = 0;
    }

    /** The first way of every order that is wanted, and no bound on any task. */
    void begin(boolean[] wanted) {
        for (int order = 0; order < ways.length; order++) {
            ways[order] = !wanted[order] ? Decoder.LEFT_OUT : compiled.mirrored ? Decoder.BUFFERED : Decoder.SPLIT;
        }
        Arrays.fill(bounds, 0);
    }

    void begin(int[] newWays, int[] newBounds) {
        System.arraycopy(newWays, 0, ways, 0, ways.length);
        System.arraycopy(newBounds, 0, bounds, 0, bounds.length);
    }

    /** After the ways or the bounds were changed: who takes part, and from when on. */
    void apply() {
        for (Task task : compiled.tasks) {
            active[task.index] = isWanted(task);
        }
        System.arraycopy(bounds, 0, release, 0, release.length);
        if (compiled.mirrored) {
            for (CompiledOrder order : compiled.orders) {
                keepBufferFree(order);
            }
        }
    }

    private void keepBufferFree(CompiledOrder order) {
        if (ways[order.index()] < Decoder.SPLIT) {
            for (Task finish : order.finishes()) {
                release[finish.index] = Math.max(release[finish.index], compiled.horizon - order.latestStart() + order.bufferWish());
            }
        }
    }

    private boolean isWanted(Task task) {
        if (task.order >= 0) {
            return !isLeftOut(task.order);
        }
        for (int order : compiled.ordersOfOwner[task.owner]) {
            if (!isLeftOut(order)) {
                return true;
            }
        }
        return false;
    }

    /** A task must not begin before an abstract minute; its bound only grows. */
    void raise(Task task, int minute) {
        bounds[task.index] = Math.max(bounds[task.index], minute);
        release[task.index] = Math.max(release[task.index], minute);
    }
}
