package crumbclock.engine.book;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.OvenRun;
import crumbclock.engine.book.CavityBook.Bake;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * When one cavity is on, and how hot (rule R08). A run is kept as the part in which it is ready; how it heats up
 * follows from the run before it: from cold when there is time for that, else by a change with the oven left on.
 */
final class OvenHeat {

    /** Runs in real time, sorted, as ready and until by temperature; a new array for every booking, the old one kept. */
    private record Runs(int[] temperature, int[] from, int[] ready, int[] until) {
        int count() {
            return ready.length;
        }
    }

    private static final Runs COLD = new Runs(new int[0], new int[0], new int[0], new int[0]);

    private final CompiledProblem compiled;
    private final Cavity cavity;
    private final PresenceBook presence;
    private final List<Runs> history = new ArrayList<>();
    private Runs runs = COLD;
    private Runs planned = COLD;

    OvenHeat(CompiledProblem compiled, Cavity cavity, PresenceBook presence) {
        this.compiled = compiled;
        this.cavity = cavity;
        this.presence = presence;
    }

    void reset() {
        history.clear();
        runs = COLD;
    }

    /** 0 when the heated part can be had, which {@link #take} then books; else how far to move, at least, in abstract time. */
    int shiftFor(Bake bake, List<Bake> bakes) {
        int ready = bake.start();
        int until = bake.heatedEnd();
        int first = 0;
        while (first < runs.count() && runs.until[first] <= ready) {
            first++;
        }
        int last = first;
        while (last < runs.count() && runs.ready[last] < bake.heatedEnd()) {
            if (runs.temperature[last] != bake.temperature()) {
                return pass(bake, runs.ready[last], runs.until[last]);
            }
            ready = Math.min(ready, runs.ready[last]);
            until = Math.max(until, runs.until[last]);
            last++;
        }
        // left on over short gaps
        while (first > 0 && joins(first - 1, bake) && ready - runs.until[first - 1] <= cavity.keepHotMinutes()) {
            ready = runs.ready[--first];
        }
        while (last < runs.count() && joins(last, bake) && runs.ready[last] - until <= cavity.keepHotMinutes()) {
            until = runs.until[last++];
        }
        planned = with(first, last, bake.temperature(), ready, until);
        for (int run = first; run <= Math.min(first + 1, planned.count() - 1); run++) {
            int before = run == 0 ? -1 : run - 1;
            if (!heatsUp(run, before)) {
                return run == first ? step(bake, before < 0 ? -1 : planned.until[before]) : pass(bake, planned.ready[run], planned.until[run]);
            }
            int nobody = nobodyShift(planned.from[run], planned.until[run]);
            if (nobody > 0) {
                // a run that also serves other bakes does not move as a whole
                return last == first && run == first ? nobody : Math.min(nobody, 1);
            }
            if (meetsColdTime(planned.from[run], planned.until[run], bake, bakes)) {
                return 1;
            }
        }
        return meetsColdOf(bake) ? 1 : 0;
    }

    private boolean joins(int run, Bake bake) {
        return runs.temperature[run] == bake.temperature();
    }

    private int pass(Bake bake, int ready, int until) {
        return Math.max(1, compiled.mirrored ? bake.heatedEnd() - ready : until - bake.start());
    }

    /** Too close behind another run (or the problem's start) to get hot. */
    private int step(Bake bake, int untilBefore) {
        return compiled.mirrored && untilBefore >= 0 ? Math.max(1, bake.heatedEnd() - untilBefore) : compiled.mirrored ? compiled.horizon + 1 : 1;
    }

    private Runs with(int first, int last, int temperature, int ready, int until) {
        int count = runs.count() - (last - first) + 1;
        Runs next = new Runs(new int[count], new int[count], new int[count], new int[count]);
        copy(runs, 0, next, 0, first);
        next.temperature[first] = temperature;
        next.ready[first] = ready;
        next.until[first] = until;
        copy(runs, last, next, first + 1, runs.count() - last);
        return next;
    }

    private static void copy(Runs source, int from, Runs target, int to, int count) {
        System.arraycopy(source.temperature, from, target.temperature, to, count);
        System.arraycopy(source.from, from, target.from, to, count);
        System.arraycopy(source.ready, from, target.ready, to, count);
        System.arraycopy(source.until, from, target.until, to, count);
    }

    private boolean heatsUp(int run, int before) {
        int ready = planned.ready[run];
        int cold = ready - cavity.preheatMinutes();
        // right behind another run it is a change, not a start from cold
        if (before < 0 ? cold >= 0 : cold > planned.until[before]) {
            planned.from[run] = cold;
            return true;
        }
        if (before < 0) {
            return false;
        }
        planned.from[run] = planned.until[before];
        return ready - planned.until[before]
                >= cavity.changeMinutes(planned.temperature[before], planned.temperature[run]);
    }

    private int nobodyShift(int from, int until) {
        if (from < 0 || until > compiled.horizon) {
            return 1;
        }
        Span span = compiled.mirror(new Span(from, until));
        int free = presence.nobodyUntil(span.start(), span.end());
        return free < 0 ? 0 : Math.max(1, free - span.start());
    }

    /** Whether the oven would be on while something cools in it or is still to be taken out, or heating up with pans in. */
    private boolean meetsColdTime(int from, int until, Bake bake, List<Bake> bakes) {
        for (Span away : cavity.away()) {
            if (away.overlaps(new Span(from, until))) {
                return true;
            }
        }
        for (Bake other : bakes) {
            if (other.heatedEnd() < other.end() && other.heatedEnd() < until && from < other.end()) {
                return true;
            }
        }
        return false;
    }

    private boolean meetsColdOf(Bake bake) {
        for (int run = 0; run < planned.count(); run++) {
            if (bake.heatedEnd() < bake.end() && bake.heatedEnd() < planned.until[run] && planned.from[run] < bake.end()) {
                return true;
            }
        }
        return false;
    }

    void take() {
        for (int run = 0; run < runs.count(); run++) {
            if (!holds(planned, runs, run)) {
                Span span = compiled.mirror(new Span(runs.from[run], runs.until[run]));
                presence.noLongerNeed(span.start(), span.end());
            }
        }
        for (int run = 0; run < planned.count(); run++) {
            if (!holds(runs, planned, run)) {
                Span span = compiled.mirror(new Span(planned.from[run], planned.until[run]));
                presence.need(span.start(), span.end());
            }
        }
        history.add(runs);
        runs = planned;
    }

    private static boolean holds(Runs where, Runs what, int run) {
        int at = java.util.Arrays.binarySearch(where.ready, what.ready[run]);
        return at >= 0 && where.from[at] == what.from[run] && where.until[at] == what.until[run];
    }

    void undo() {
        runs = history.remove(history.size() - 1);
    }

    /** A recorded bake was hot, whatever the figures say (rule R15): joins runs of its temperature, else stands by itself. */
    void force(Bake bake) {
        if (shiftFor(bake, List.of()) != 0) {
            int first = 0;
            while (first < runs.count() && runs.ready[first] < bake.start()) {
                first++;
            }
            planned = with(first, first, bake.temperature(), bake.start(), bake.heatedEnd());
            planned.from[first] = Math.max(first == 0 ? 0 : planned.until[first - 1],
                    bake.start() - cavity.preheatMinutes());
        }
        take();
    }

    List<OvenRun> runs() {
        List<OvenRun> list = new ArrayList<>();
        for (int run = 0; run < runs.count(); run++) {
            list.add(new OvenRun(cavity.id(), runs.temperature[run], runs.from[run], runs.ready[run], runs.until[run]));
        }
        return list;
    }

    int count() {
        return runs.count();
    }

    int minutesOn() {
        int minutes = 0;
        for (int run = 0; run < runs.count(); run++) {
            minutes += runs.until[run] - runs.from[run];
        }
        return minutes;
    }
}
