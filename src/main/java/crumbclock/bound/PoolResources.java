package crumbclock.bound;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Need;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Equipment (rule R06): minutes for which pieces are held and cleaned against the pieces there are. */
final class PoolResources {

    /** Tasks looked at between the one that takes a piece and the one that gives it back. */
    private static final int MOST_LOOKS = 500;

    private final CompiledProblem compiled;
    private final Net net;

    PoolResources(CompiledProblem compiled, Net net) {
        this.compiled = compiled;
        this.net = net;
    }

    List<Resource> all() {
        List<List<Use>> uses = new ArrayList<>();
        compiled.kitchen().pools().forEach(pool -> uses.add(new ArrayList<>()));
        for (Need need : compiled.needs) {
            int first = need.first().index;
            int last = need.last().index;
            int length = first == last ? net.rooms[first].shortest() : way(first, last);
            if (length > 0 && !net.fixed[first]) {
                uses.get(need.pool()).add(new Use(Use.When.ALL, first, last, length,
                        compiled.kitchen().pools().get(need.pool()).cleanMinutes(), need.units(), null));
            }
        }
        List<Resource> all = new ArrayList<>();
        for (int pool = 0; pool < uses.size(); pool++) {
            Pool pieces = compiled.kitchen().pools().get(pool);
            all.add(new Resource(pieces.name(), supply(pieces), pieces.count(), uses.get(pool)));
        }
        return all;
    }

    /** Least minutes from the start of one task to the end of another, by the waits between them. */
    private int way(int first, int last) {
        Map<Integer, Integer> least = new HashMap<>();
        least.put(first, net.rooms[first].shortest());
        List<Integer> next = new ArrayList<>(List.of(first));
        for (int at = 0; at < next.size() && at < MOST_LOOKS; at++) {
            int task = next.get(at);
            for (int wait : net.after[task]) {
                int to = net.to[wait];
                int end = least.get(task) + net.least[wait] + net.rooms[to].shortest();
                if (isPlacedWith(to, first, last) && end > least.getOrDefault(to, Integer.MIN_VALUE)) {
                    least.put(to, end);
                    next.add(to);
                }
            }
        }
        return Math.max(0, least.getOrDefault(last, 0));
    }

    /** Steps of one owner are placed all or none; nothing is known of how long a recorded one took. */
    private boolean isPlacedWith(int task, int first, int last) {
        int owner = compiled.tasks[task].owner;
        return !net.fixed[task] && (owner == compiled.tasks[first].owner || owner == compiled.tasks[last].owner);
    }

    private Supply supply(Pool pool) {
        long[] perMinute = new long[compiled.horizon];
        Arrays.fill(perMinute, pool.count());
        pool.away().forEach(away -> take(perMinute, away.when()));
        for (FixedStep fixed : compiled.problem.fixedSteps()) {
            for (UnitUse use : fixed.step().units()) {
                if (use.poolId().equals(pool.id())) {
                    take(perMinute, new Span(use.from(), Math.max(use.from(), use.until())));
                }
            }
        }
        return Supply.of(perMinute, pool.count());
    }

    private static void take(long[] perMinute, Span when) {
        for (int minute = Math.max(0, when.start()); minute < Math.min(perMinute.length, when.end()); minute++) {
            perMinute[minute] = Math.max(0, perMinute[minute] - 1);
        }
    }
}
