package crumbclock.app.promise;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.engine.model.Unit;
import crumbclock.search.model.DecodeDesk;
import crumbclock.search.model.DecodeDesk.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Looks for plans that no order of work says: a step that waits though it could begin, so that another fits in before it; work done by
 * somebody who is not through with it first; a place left as early as a wait allows. Each is a problem with less room than the real one
 * ({@link Narrowed}), so that what is found holds for the real one, too.
 *
 * <p>Late acceptance (Burke and Bykov 2017): a change is taken when it is no worse than what was weighed some changes before. Meant for small
 * problems, in which a few minutes show; in a large one there are too many steps to hold back.
 */
final class HoldBack {

    /** Steps to plan up to which it is tried. */
    static final int MOST_STEPS = 40;
    /** Changes after which a worse weight is forgotten. */
    private static final int MEMORY = 60;
    /** Changes without a new best after which it begins anew. */
    private static final int PATIENCE = 250;
    /** One change in so many needs a new problem compiled, which takes as long as many decodes. */
    private static final int NARROW_EVERY = 6;
    /** Longest of the short times by which a step is held back without another step as its reason, minutes. */
    private static final int SHORT = 20;

    private final Random random;
    private final Weight[] memory = new Weight[MEMORY];
    private final int[] ways;
    private final Narrowed none;
    private State at;
    private State best;
    private Cost bestCost;
    private Timetable bestTimetable;

    /** A desk for a narrowed problem, the order of work on it, how early each task may begin; and when each begins and ends, by that. */
    private record State(Narrowed narrowed, DecodeDesk desk, int[] sequence, int[] bounds, Weight weight, int[] starts, int[] ends) {
    }

    private HoldBack(Problem problem, Timetable start, long seed) {
        random = new Random(seed);
        ways = new int[problem.orders().size()];
        Arrays.fill(ways, Decoder.SPLIT);
        none = Narrowed.none(problem);
        DecodeDesk desk = none.desk();
        at = weighed(none, desk, sequence(desk.compiled(), start), new int[desk.compiled().tasks.length]);
    }

    /**
     * The least cost that is found.
     *
     * @param problem with fixed steps for all that has begun, none of which goes on
     * @param start   a timetable of it, from whose order of work the search begins
     * @param changes that are tried
     * @return empty when no sound timetable was found
     */
    static Optional<Timetable> search(Problem problem, Timetable start, long seed, long changes, BooleanSupplier stop) {
        var search = new HoldBack(problem, start, seed);
        search.run(changes, stop);
        return Optional.ofNullable(search.bestTimetable);
    }

    private static int[] sequence(CompiledProblem compiled, Timetable start) {
        int[] begins = new int[compiled.tasks.length];
        Arrays.fill(begins, compiled.horizon);
        for (Task task : compiled.tasks) {
            start.steps().stream().filter(step -> step.stepId().equals(task.step.id())).mapToInt(PlacedStep::start)
                    .forEach(begin -> begins[task.index] = begin);
        }
        return byFirst(compiled, begins);
    }

    /** Units in the order of the least key among their tasks. */
    private static int[] byFirst(CompiledProblem compiled, int[] keys) {
        return Arrays.stream(compiled.units.fine).sorted(Comparator.comparingInt((Unit unit) -> Arrays.stream(unit.members())
                .mapToInt(task -> keys[task.index]).min().orElse(0)).thenComparingInt(Unit::index)).mapToInt(Unit::index).toArray();
    }

    private void run(long changes, BooleanSupplier stop) {
        keep(at);
        Arrays.fill(memory, at.weight);
        long since = 0;
        int rounds = 0;
        for (long change = 0; change < changes && !stop.getAsBoolean(); change++) {
            int slot = (int) (change % MEMORY);
            State next = changed();
            since = keep(next) ? 0 : since + 1;
            if (since == 0 || next.weight.compareTo(memory[slot]) <= 0 || next.weight.compareTo(at.weight) <= 0) {
                at = next;
            }
            if (at.weight.compareTo(memory[slot]) < 0) {
                memory[slot] = at.weight;
            }
            if (since == PATIENCE) {
                beginAnew(rounds++);
                since = 0;
            }
        }
    }

    /** From the best as it is, or with everything open again, since one thing held back may be in the way of a better one. */
    private void beginAnew(int round) {
        if (best != null) {
            at = round % 2 == 1 ? best : open(best);
            Arrays.fill(memory, at.weight);
        }
    }

    private State open(State state) {
        DecodeDesk desk = none.desk();
        return weighed(none, desk, inOrderOf(state, desk.compiled()), new int[state.bounds.length]);
    }

    /** A sound timetable of less cost is the new best. */
    private boolean keep(State state) {
        if (!state.desk.isSound() || bestCost != null && state.weight.cost().compareTo(bestCost) >= 0) {
            return false;
        }
        bestCost = state.weight.cost();
        best = state;
        bestTimetable = new TimetableBuilder(state.desk.decoder()).build();
        return true;
    }

    private State weighed(Narrowed narrowed, DecodeDesk desk, int[] sequence, int[] bounds) {
        desk.bound(bounds);
        Weight weight = desk.weigh(sequence, ways);
        int[] starts = new int[bounds.length];
        int[] ends = new int[bounds.length];
        desk.decoder().copyTimes(starts, ends);
        return new State(narrowed, desk, sequence, bounds, weight, starts, ends);
    }

    private State changed() {
        if (random.nextInt(NARROW_EVERY) == 0) {
            Narrowed narrowed = at.narrowed.changed(random);
            DecodeDesk desk = narrowed.desk();
            return weighed(narrowed, desk, inOrderOf(at, desk.compiled()), at.bounds);
        }
        if (random.nextInt(3) == 0 && at.sequence.length > 1) {
            return weighed(at.narrowed, at.desk, moved(at.sequence), at.bounds);
        }
        return weighed(at.narrowed, at.desk, at.sequence, held());
    }

    /** The same order of work where narrower waits make other units. */
    private static int[] inOrderOf(State state, CompiledProblem compiled) {
        int[] keys = new int[compiled.tasks.length];
        for (int turn = 0; turn < state.sequence.length; turn++) {
            for (Task task : state.desk.compiled().units.fine[state.sequence[turn]].members()) {
                keys[task.index] = turn;
            }
        }
        return byFirst(compiled, keys);
    }

    private int[] moved(int[] of) {
        List<Integer> sequence = new ArrayList<>(Arrays.stream(of).boxed().toList());
        Integer unit = sequence.remove(random.nextInt(of.length));
        sequence.add(random.nextInt(of.length), unit);
        return sequence.stream().mapToInt(Integer::intValue).toArray();
    }

    /** A task held back until another one is over, or begins when this one is over, or for another one to fit in; or one let go. */
    private int[] held() {
        int[] bounds = at.bounds.clone();
        int task = random.nextInt(bounds.length);
        if (bounds[task] > 0 && random.nextBoolean()) {
            bounds[task] = 0;
            return bounds;
        }
        int other = random.nextInt(bounds.length);
        int third = random.nextInt(bounds.length);
        int minute = switch (random.nextInt(4)) {
            case 0 -> at.ends[other];
            case 1 -> at.starts[other] - (at.ends[task] - at.starts[task]);
            case 2 -> at.ends[other] + at.ends[third] - at.starts[third];
            default -> at.starts[task] + 1 + random.nextInt(SHORT);
        };
        bounds[task] = Math.max(0, Math.min(minute, at.desk.compiled().horizon));
        return bounds;
    }
}
