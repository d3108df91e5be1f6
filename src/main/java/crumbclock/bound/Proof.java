package crumbclock.bound;

import crumbclock.engine.model.CompiledProblem;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks for a contradiction: whether certain tasks can be in one plan when some have to end by certain minutes. A "no" is
 * proven, a "maybe" says nothing.
 */
final class Proof {

    /** How often windows may narrow each other. */
    private static final int ROUNDS = 8;

    final Net net;
    final boolean[] in;

    private final Net mirror;
    private final List<Resource> resources;
    private final Pairs pairs;
    private final Heads heads;
    private final boolean possible;

    private Proof(Net net, Net mirror, List<Resource> resources, boolean[] in) {
        this.net = net;
        this.mirror = mirror;
        this.resources = resources;
        this.in = in;
        pairs = new Pairs(resources, in);
        heads = new Heads(net, in);
        possible = heads.settle();
    }

    static Proof of(CompiledProblem compiled, boolean[] in) {
        Calendars calendars = new Calendars(compiled);
        Net net = Net.of(compiled, new Rooms(compiled, calendars).all());
        OvenResources ovens = new OvenResources(compiled, calendars, net);
        List<Resource> resources = new ArrayList<>(new HandResources(compiled, calendars, net, ovens.alone()).all());
        resources.addAll(new PoolResources(compiled, net).all());
        resources.addAll(ovens.all());
        resources.addAll(new StandResources(compiled, net).all());
        return new Proof(net, net.mirrored(), resources, in);
    }

    /** The same for other tasks. */
    Proof with(boolean[] others) {
        return new Proof(net, mirror, resources, others);
    }

    /** The same for other tasks, by waits and calendars alone: quick, where there are very many. */
    Proof withoutResources(boolean[] others) {
        return new Proof(net, mirror, List.of(), others);
    }

    int earliestStart(int task) {
        return heads.start[task];
    }

    int earliestEnd(int task) {
        return heads.end[task];
    }

    /** Whether it is proven that the tasks cannot all be in a plan within these limits. */
    boolean isContradicted(Limits limits) {
        if (!possible) {
            return true;
        }
        Heads early = new Heads(heads);
        Heads late = new Heads(mirror, in);
        for (int task = 0; task < in.length; task++) {
            late.raiseStart(task, net.horizon - limits.latestEnd(task));
            late.raiseEnd(task, net.horizon - limits.latestStart(task));
        }
        for (int round = 0; round < ROUNDS; round++) {
            if (!areInOrder(early, late, limits)) {
                return true;
            }
            Windows windows = new Windows(early, late, net.horizon);
            if (!resources.stream().allMatch(resource -> resource.settle(windows, in, early, late))) {
                return true;
            }
            if (!(early.hasChanged() | late.hasChanged())) {
                return false;
            }
        }
        return false;
    }

    /** Narrows windows by waits, rooms and pairs until nothing changes; false at a contradiction. */
    private boolean areInOrder(Heads early, Heads late, Limits limits) {
        do {
            if (!early.settle() || !late.settle()) {
                return false;
            }
            early.hasChanged();
            late.hasChanged();
            Windows windows = new Windows(early, late, net.horizon);
            if (isTooNarrow(windows, limits) || !pairs.settle(windows, early, late)) {
                return false;
            }
        } while (early.hasChanged() | late.hasChanged());
        return true;
    }

    private boolean isTooNarrow(Windows windows, Limits limits) {
        for (int task = 0; task < in.length; task++) {
            if (in[task] && !net.fixed[task] && (windows.earliestStart[task] > windows.latestStart[task]
                    || windows.earliestEnd[task] > windows.latestEnd[task])) {
                return true;
            }
            if (in[task] && net.fixed[task] && (net.firstEnd[task] > limits.latestEnd(task)
                    || net.firstStart[task] > limits.latestStart(task))) {
                return true;
            }
        }
        return false;
    }

    /** By when tasks have to start and end; the horizon where nothing more is asked. */
    interface Limits {

        int latestStart(int task);

        int latestEnd(int task);
    }
}
