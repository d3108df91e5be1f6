package crumbclock.bound;

import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.work.Form;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Spot;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Shelves and surfaces (rules R06, R10): for each set of places, what can stand nowhere else while nobody works on it.
 * Counted by area, and by the things of which no two find room on one shelf.
 */
final class StandResources {

    private static final int MOST_GROUPS = 16;

    private final CompiledProblem compiled;
    private final Net net;

    StandResources(CompiledProblem compiled, Net net) {
        this.compiled = compiled;
        this.net = net;
    }

    List<Resource> all() {
        Map<Set<Integer>, List<Task>> stays = new LinkedHashMap<>();
        for (Task task : compiled.tasks) {
            if (!task.handsOn && task.spots.length > 0 && !net.fixed[task.index] && net.rooms[task.index].shortest() > 0) {
                Set<Integer> places = new TreeSet<>(IntStream.of(task.spots).boxed().toList());
                stays.computeIfAbsent(places, key -> new ArrayList<>()).add(task);
            }
        }
        List<Resource> all = new ArrayList<>();
        for (Set<Integer> group : stays.keySet().stream().limit(MOST_GROUPS).toList()) {
            List<Use> area = new ArrayList<>();
            List<Use> alone = new ArrayList<>();
            boolean shelves = group.stream().allMatch(place -> place >= 0);
            stays.forEach((places, tasks) -> {
                if (group.containsAll(places)) {
                    tasks.forEach(task -> add(task, group, area, shelves ? alone : new ArrayList<>()));
                }
            });
            all.add(resource("places by area", group, false, area));
            if (!alone.isEmpty()) {
                all.add(resource("places by piece", group, true, alone));
            }
        }
        return all;
    }

    private void add(Task task, Set<Integer> group, List<Use> area, List<Use> alone) {
        Form form = task.step.place().orElseThrow().form();
        int length = net.rooms[task.index].shortest();
        long taken = group.stream().mapToLong(place -> place < 0 ? task.areaMm2
                : form.pieces() * Area.taken(form.footprint(), spot(place).store().gapMm())).min().orElse(0);
        if (taken > 0) {
            area.add(Use.all(task.index, length, taken));
        }
        if (group.stream().allMatch(place -> place >= 0 && isAlone(form, spot(place)))) {
            alone.add(Use.all(task.index, length, form.pieces()));
        }
    }

    private Spot spot(int place) {
        return compiled.spots[place];
    }

    private static boolean isAlone(Form form, Spot spot) {
        Shelf shelf = spot.shelf();
        return Area.isAlone(form.footprint(), shelf.widthMm(), shelf.depthMm(), spot.store().wallGapMm(), spot.store().gapMm());
    }

    private Resource resource(String name, Set<Integer> group, boolean counted, List<Use> uses) {
        long[] perMinute = new long[compiled.horizon];
        long peak = 0;
        for (int place : group) {
            long each = counted ? 1 : area(place);
            peak += each;
            long[] there = new long[compiled.horizon];
            Arrays.fill(there, each);
            for (Span away : place < 0 ? surface(place).away() : spot(place).store().away()) {
                for (int minute = Math.max(0, away.start()); minute < Math.min(there.length, away.end()); minute++) {
                    there[minute] = 0;
                }
            }
            for (int minute = 0; minute < perMinute.length; minute++) {
                perMinute[minute] += there[minute];
            }
        }
        return new Resource(name, Supply.of(perMinute, peak), peak, uses);
    }

    private long area(int place) {
        if (place < 0) {
            return surface(place).areaMm2();
        }
        Store store = spot(place).store();
        Shelf shelf = spot(place).shelf();
        return Area.given(shelf.widthMm(), shelf.depthMm(), store.wallGapMm(), store.gapMm());
    }

    private Surface surface(int place) {
        return compiled.kitchen().surfaces().get(-1 - place);
    }
}
