package crumbclock.app.replan;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.KeptStep;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Goes on in the order of the known plan, with each known step at its known time or as soon after it as it can be; what is
 * to be made again is fitted in between. From there single units change their places in the order, as long as that makes the
 * plan no worse.
 */
final class Shift {

    /** Where in the order repeated work may begin: so many minutes from now. */
    private static final int[] DELAYS = {0, 20, 45, 90, 150, 240};

    private static final OldPlan NOTHING = new OldPlan(new Timetable(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()));
    /** A timetable that breaks more minutes than this is not worth mending. */
    private static final int MOST_BROKEN = 300;
    /** Mending takes many timetables, so not every promising one is mended. */
    private static final int MEND_EVERY = 60;

    private final DecodeDesk desk;
    private final Decoder decoder;
    private final CompiledProblem compiled;
    private final BooleanSupplier stop;
    private final boolean[] troubled;
    private int[] best;
    private Cost bestCost;
    private int[] bestBounds;
    private Timetable bestTimetable;
    private long mendAgain;

    private Shift(Problem rest, BooleanSupplier stop) {
        compiled = CompiledProblem.of(rest, false);
        desk = new DecodeDesk(compiled);
        decoder = desk.decoder();
        troubled = new boolean[compiled.orders.length];
        this.stop = stop;
    }

    /**
     * What was found.
     *
     * @param cost      as the engine measures it
     * @param schedules timetables made
     */
    record Shifted(Timetable timetable, Cost cost, long schedules) {
    }

    /**
     * @param order the timetable whose order of work is kept
     * @param anew  whether what the order left out is tried as if it began now; else where people know it
     * @param held  whether known steps begin no earlier than people know
     * @param most  timetables that may be made, roughly
     */
    static Shifted of(Problem rest, Situation situation, OldPlan order, boolean anew, boolean held, long seed, long most, BooleanSupplier stop) {
        var shift = new Shift(held ? held(rest) : rest, stop);
        shift.begin(situation, order, anew ? NOTHING : situation.old());
        shift.climb(new Random(seed), most);
        return new Shifted(shift.bestTimetable, shift.bestCost, shift.decoder.schedules());
    }

    private static Problem held(Problem rest) {
        Map<String, Integer> known = new LinkedHashMap<>();
        for (KeptStep step : rest.kept().steps()) {
            known.put(step.stepId(), step.start());
        }
        return rest.withEachStep(step -> known.containsKey(step.id()) ? StepCopies.notBefore(step, known.get(step.id())) : step);
    }

    private void begin(Situation situation, OldPlan order, OldPlan leftOut) {
        for (int delay : DELAYS) {
            if (best == null || !stop.getAsBoolean()) {
                consider(sequence(situation, order, leftOut, delay));
            }
        }
    }

    /**
     * Units by the time at which they were to begin; what is made again as if it began so many minutes from now.
     *
     * @param leftOut when what the order does not have was to begin; what is in neither begins as what is made again
     */
    private int[] sequence(Situation situation, OldPlan order, OldPlan leftOut, int delay) {
        int firstLost = order.timetable().steps().stream().filter(step -> situation.lostAt().containsKey(step.stepId()))
                .mapToInt(PlacedStep::start).min().orElse(situation.now());
        Map<Integer, Integer> begins = new LinkedHashMap<>();
        for (Unit unit : compiled.units.fine) {
            int begin = Integer.MAX_VALUE;
            for (Task task : unit.members()) {
                var planned = order.find(task.step.id()).or(() -> leftOut.find(task.step.id()));
                if (planned.isPresent()) {
                    boolean again = situation.lostAt().containsKey(task.step.id()) && planned.get().start() < situation.now();
                    begin = Math.min(begin, again ? planned.get().start() - firstLost + situation.now() + delay : planned.get().start());
                }
            }
            begins.put(unit.index(), begin == Integer.MAX_VALUE ? situation.now() + delay : begin);
        }
        List<Integer> sorted = new ArrayList<>(begins.keySet());
        sorted.sort(Comparator.comparingInt((Integer unit) -> begins.get(unit)).thenComparingInt(unit -> unit));
        return sorted.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Decodes with everything mended; sound by construction, and slow. */
    private void consider(int[] sequence) {
        keep(sequence, desk.mend(sequence));
    }

    private void keep(int[] sequence, Cost cost) {
        if (bestCost != null && cost.compareTo(bestCost) > 0) {
            return;
        }
        if (bestCost == null || cost.compareTo(bestCost) < 0) {
            bestTimetable = new TimetableBuilder(decoder).build();
            for (int index = 0; index < troubled.length; index++) {
                Outcome outcome = bestTimetable.outcomes().get(index);
                troubled[index] = !outcome.possible() || outcome.lateMinutes() > 0;
            }
            bestBounds = decoder.bounds();
        }
        best = sequence;
        bestCost = cost;
    }

    /** From the best order of work on to ever lighter ones; what breaks nothing counts at once, what breaks little is mended. */
    private void climb(Random random, long mostSchedules) {
        int[] ways = new int[compiled.orders.length];
        Arrays.fill(ways, Decoder.SPLIT);
        int[] current = best;
        desk.bound(bestBounds);
        Weight lightest = desk.weigh(current, ways);
        while (decoder.schedules() < mostSchedules && current.length > 1 && !stop.getAsBoolean()) {
            int[] next = moved(current, random);
            Weight weight = desk.weigh(next, ways);
            int compared = weight.compareTo(lightest);
            if (compared > 0) {
                continue;
            }
            current = next;
            lightest = weight;
            if (compared < 0 && desk.isSound()) {
                keep(next, weight.cost());
            } else if (compared < 0 && weight.breaks() < MOST_BROKEN && decoder.schedules() >= mendAgain) {
                consider(next);
                mendAgain = decoder.schedules() + MEND_EVERY;
            }
        }
        consider(current);
    }

    /** One unit, or all units of an order, put elsewhere; half the time it is one of an order that is late or has no place. */
    private int[] moved(int[] of, Random random) {
        int from = random.nextInt(of.length);
        if (random.nextBoolean()) {
            for (int look = 0; look < of.length && !isTroubled(of[from]); look++) {
                from = (from + 1) % of.length;
            }
        }
        if (random.nextInt(4) == 0 && compiled.units.fine[of[from]].orders().length > 0) {
            return orderMoved(of, compiled.units.fine[of[from]].orders()[0], random);
        }
        int reach = random.nextBoolean() ? of.length : Math.min(of.length, 12);
        int to = Math.max(0, Math.min(of.length - 1, from + random.nextInt(2 * reach + 1) - reach));
        int[] sequence = of.clone();
        int unit = sequence[from];
        if (to > from) {
            System.arraycopy(sequence, from + 1, sequence, from, to - from);
        } else {
            System.arraycopy(sequence, to, sequence, to + 1, from - to);
        }
        sequence[to] = unit;
        return sequence;
    }

    private boolean isTroubled(int unit) {
        return Arrays.stream(compiled.units.fine[unit].orders()).anyMatch(order -> troubled[order]);
    }

    /** All units of one order a stretch earlier or later. */
    private int[] orderMoved(int[] of, int order, Random random) {
        int by = random.nextInt(2 * of.length / 3 + 1) - of.length / 3;
        double[] keys = new double[compiled.units.fine.length];
        for (int at = 0; at < of.length; at++) {
            int unit = of[at];
            boolean own = Arrays.stream(compiled.units.fine[unit].orders()).anyMatch(one -> one == order);
            keys[unit] = own ? at + by + 0.5 : at;
        }
        Integer[] sorted = Arrays.stream(of).boxed().toArray(Integer[]::new);
        Arrays.sort(sorted, Comparator.comparingDouble(unit -> keys[unit]));
        return Arrays.stream(sorted).mapToInt(Integer::intValue).toArray();
    }
}
