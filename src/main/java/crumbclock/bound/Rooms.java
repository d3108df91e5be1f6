package crumbclock.bound;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds when each task can be at all: hands with the skill at their own pace (R03), touches (R04), somebody near (R05),
 * a hot oven with room for the pans (R07, R08), pieces that are big enough (R06), some place to stand (R10, R11).
 */
final class Rooms {

    private final CompiledProblem compiled;
    private final Calendars calendars;
    private final int horizon;
    private final Map<List<Object>, Room> worked = new HashMap<>();
    private final Map<List<Object>, long[]> runs = new HashMap<>();

    Rooms(CompiledProblem compiled, Calendars calendars) {
        this.compiled = compiled;
        this.calendars = calendars;
        this.horizon = compiled.horizon;
    }

    Room[] all() {
        return Arrays.stream(compiled.tasks).map(this::of).toArray(Room[]::new);
    }

    private Room of(Task task) {
        if (!fits(task)) {
            return new Room(Instants.none(horizon), Instants.none(horizon), 0, Integer.MAX_VALUE, null);
        }
        return task.handsOn ? near(task, handsOn(task)) : unattended(task);
    }

    /** What never changes: pieces that hold the amount, and enough of them; somewhere to stand. */
    private boolean fits(Task task) {
        for (Need need : task.takes) {
            if (need.owner() == task && need.units() > compiled.kitchen().pools().get(need.pool()).count()) {
                return false;
            }
        }
        boolean amounts = task.step.equipment().stream().allMatch(need -> compiled.kitchen().pools().stream()
                .filter(pool -> pool.id().equals(need.poolId())).mapToInt(Pool::capacity).allMatch(most -> need.amount() <= most));
        boolean stands = task.handsOn || task.leastLength() == 0 || task.step.place().isEmpty() || task.spots.length > 0;
        return amounts && stands;
    }

    private Room near(Task task, Room room) {
        if (!task.presence || room.shortest() == 0) {
            return room;
        }
        return new Room(Instants.both(room.starts(), starts("watch", calendars.watched, room.shortest())),
                Instants.both(room.ends(), ends("watch", calendars.watched, room.shortest())), room.shortest(),
                room.longest(), room.pieces());
    }

    private Room handsOn(Task task) {
        if (!task.works) {
            return new Room(null, null, 0, 0, null);
        }
        List<Object> key = List.of(task.people, task.mayPutDown, IntStream.of(task.workers).boxed().toList(),
                IntStream.of(task.workerMinutes).boxed().toList());
        return worked.computeIfAbsent(key, one -> worked(task));
    }

    private Room worked(Task task) {
        if (task.workers.length < task.people) {
            return new Room(Instants.none(horizon), Instants.none(horizon), 0, 0, null);
        }
        int[] sorted = task.workerMinutes.clone();
        Arrays.sort(sorted);
        // the slowest of those who work together sets the time, and that is never faster than this
        int shortest = sorted[task.people - 1];
        if (task.mayPutDown) {
            long[] enough = calendars.workOf(task.workers, task.people);
            return new Room(Instants.starts(enough, 1, horizon), Instants.ends(enough, 1, horizon), shortest,
                    Integer.MAX_VALUE, pieces(task, enough, shortest));
        }
        int[] starts = new int[horizon + 1];
        int[] ends = new int[horizon + 1];
        for (int worker = 0; worker < task.workers.length; worker++) {
            int minutes = Math.max(shortest, task.workerMinutes[worker]);
            count(starts, Instants.starts(calendars.work[task.workers[worker]], minutes, horizon));
            count(ends, Instants.ends(calendars.work[task.workers[worker]], minutes, horizon));
        }
        return new Room(atLeast(starts, task.people), atLeast(ends, task.people), shortest, sorted[sorted.length - 1], null);
    }

    private Pieces pieces(Task task, long[] enough, int shortest) {
        if (task.people > 1) {
            return new Pieces(new Presence[] {new Presence(enough, horizon)}, new int[] {shortest});
        }
        return new Pieces(IntStream.of(task.workers).mapToObj(person -> calendars.presence[person]).toArray(Presence[]::new),
                task.workerMinutes);
    }

    private void count(int[] counts, long[] moments) {
        for (int moment = 0; moment <= horizon; moment++) {
            counts[moment] += (moments[moment >>> 6] >>> moment & 1L) != 0 ? 1 : 0;
        }
    }

    private long[] atLeast(int[] counts, int least) {
        long[] moments = Instants.none(horizon);
        for (int moment = 0; moment <= horizon; moment++) {
            if (counts[moment] >= least) {
                moments[moment >>> 6] |= 1L << moment;
            }
        }
        return moments;
    }

    private Room unattended(Task task) {
        long[] starts = task.inMinutes == 0 ? null : touched("in", task.inPeople, task.inMinutes);
        long[] ends = task.outMinutes == 0 ? null : touched("out", task.outPeople, task.outMinutes);
        Room room = near(task, new Room(starts, ends, task.leastLength(), task.mostLength(), null));
        return task.bakes ? baked(task, room) : room;
    }

    private long[] touched(String end, int[] people, int minutes) {
        return runs.computeIfAbsent(List.of(end, IntStream.of(people).boxed().toList(), minutes), key -> {
            long[] moments = Instants.none(horizon);
            for (int person : people) {
                Instants.unite(moments, end.equals("in") ? Instants.starts(calendars.touch[person], minutes, horizon)
                        : Instants.ends(calendars.touch[person], minutes, horizon));
            }
            return moments;
        });
    }

    private Room baked(Task task, Room room) {
        long[] starts = Instants.none(horizon);
        long[] ends = Instants.none(horizon);
        int whole = room.shortest();
        int heated = task.coolsInOven ? task.inMinutes + task.bakeMinutes : whole;
        for (int cavity = 0; cavity < calendars.hot.length; cavity++) {
            if (suits(compiled.kitchen().cavities().get(cavity), task.step.oven().orElseThrow())) {
                Instants.unite(starts, Instants.both(starts("hot " + cavity, calendars.hot[cavity], heated),
                        starts("there " + cavity, calendars.there[cavity], whole)));
                Instants.unite(ends, task.coolsInOven ? ends("there " + cavity, calendars.there[cavity], whole)
                        : ends("hot " + cavity, calendars.hot[cavity], whole));
            }
        }
        return new Room(Instants.both(room.starts(), starts), Instants.both(room.ends(), ends), whole, room.longest(), null);
    }

    /** Whether the cavity reaches the temperature, and each pan by itself finds a rack. */
    static boolean suits(Cavity cavity, OvenUse oven) {
        return oven.temperatureC() >= cavity.leastC() && oven.temperatureC() <= cavity.mostC()
                && oven.pans().stream().allMatch(pan -> cavity.racks().stream().anyMatch(rack -> stands(pan, rack, cavity)));
    }

    private static boolean stands(Pan pan, Rack rack, Cavity cavity) {
        int width = rack.widthMm() - 2 * cavity.wallGapMm();
        int depth = rack.depthMm() - 2 * cavity.wallGapMm();
        Footprint seen = pan.footprint();
        return pan.heightMm() <= rack.clearHeightMm() && (seen.widthMm() <= width && seen.depthMm() <= depth
                || seen.depthMm() <= width && seen.widthMm() <= depth);
    }

    private long[] starts(String whose, long[] calendar, int length) {
        return runs.computeIfAbsent(List.of("starts", whose, length), key -> Instants.starts(calendar, length, horizon));
    }

    private long[] ends(String whose, long[] calendar, int length) {
        return runs.computeIfAbsent(List.of("ends", whose, length), key -> Instants.ends(calendar, length, horizon));
    }
}
