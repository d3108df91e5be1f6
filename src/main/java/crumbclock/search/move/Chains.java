package crumbclock.search.move;

import crumbclock.engine.decode.Decoder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Link;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.Random;

/**
 * Why steps of a timetable do not start earlier: from a last step back, over waits and over steps that had something in use,
 * to the start. Moving anything else cannot end the work earlier (the critical path neighbourhoods of van Laarhoven, Aarts and Lenstra 1992
 * rest on that).
 */
final class Chains {

    private final CompiledProblem compiled;
    private final int[] start;
    private final int[] end;
    /** By task: pools and people that it may use, as bits; from 64 on they share bits, which only makes more pairs. */
    private final long[] pools;
    private final long[] people;
    private final Task[] last;
    private int first = -1;
    private int second = -1;

    Chains(CompiledProblem compiled) {
        this.compiled = compiled;
        int count = compiled.tasks.length;
        start = new int[count];
        end = new int[count];
        pools = new long[count];
        people = new long[count];
        for (Task task : compiled.tasks) {
            for (Need need : task.takes) {
                pools[task.index] |= 1L << need.pool();
            }
            for (Need need : task.gives) {
                pools[task.index] |= 1L << need.pool();
            }
            for (int[] who : new int[][] {task.workers, task.inPeople, task.outPeople}) {
                for (int person : who) {
                    people[task.index] |= 1L << person;
                }
            }
        }
        last = Arrays.stream(compiled.tasks).filter(task -> task.after.length == 0).toArray(Task[]::new);
    }

    /** Takes the times of the decoder's last timetable as those to look into. */
    void read(Decoder decoder) {
        decoder.copyTimes(start, end);
    }

    /** Ends by task, in abstract time; −1 for what had no place. */
    int[] ends() {
        return end;
    }

    /** Finds by chance a unit that something waits for ({@link #first}) and the unit that waits ({@link #second}). */
    boolean find(Random random) {
        Task at = last[random.nextInt(last.length)];
        int pairs = 0;
        for (int steps = 0; at != null && start[at.index] > 0 && steps < compiled.tasks.length; steps++) {
            Task cause = cause(at, random);
            Task blocker = cause == null ? blocker(at, random) : null;
            if (blocker != null && random.nextInt(++pairs) == 0) {
                first = compiled.units.unitOf[blocker.index];
                second = compiled.units.unitOf[at.index];
            }
            at = cause != null ? cause : blocker;
        }
        return pairs > 0;
    }

    int first() {
        return first;
    }

    int second() {
        return second;
    }

    /** A step whose end and wait it began right after. */
    private Task cause(Task task, Random random) {
        Task cause = null;
        int causes = 0;
        for (Link link : task.before) {
            int from = link.from().index;
            if (end[from] >= 0 && end[from] + link.least() >= start[task.index] && random.nextInt(++causes) == 0) {
                cause = link.from();
            }
        }
        return cause;
    }

    /** A step of another unit that ended just when this one began, and may have had in use what this one needs. */
    private Task blocker(Task task, Random random) {
        Task blocker = null;
        int blockers = 0;
        for (Task other : compiled.tasks) {
            if (end[other.index] == start[task.index] && compiled.units.unitOf[other.index] != compiled.units.unitOf[task.index]
                    && share(task, other) && random.nextInt(++blockers) == 0) {
                blocker = other;
            }
        }
        return blocker;
    }

    private boolean share(Task a, Task b) {
        return (pools[a.index] & pools[b.index]) != 0 || (people[a.index] & people[b.index]) != 0 || a.bakes && b.bakes;
    }
}
