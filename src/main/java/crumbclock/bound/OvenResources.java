package crumbclock.bound;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.work.Pan;
import crumbclock.engine.model.Bits;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * Ovens (rules R07, R08): for each set of cavities, the bakes that fit nowhere else. Counted twice: by the area that pans
 * take, and by the pans of which no two find room on one rack.
 */
final class OvenResources {

    private final CompiledProblem compiled;
    private final Calendars calendars;
    private final Net net;
    private final List<Cavity> cavities;

    OvenResources(CompiledProblem compiled, Calendars calendars, Net net) {
        this.compiled = compiled;
        this.calendars = calendars;
        this.net = net;
        cavities = compiled.kitchen().cavities();
    }

    List<Resource> all() {
        Map<List<Integer>, List<Task>> bakes = new LinkedHashMap<>();
        for (Task task : compiled.tasks) {
            if (task.bakes && !net.fixed[task.index] && net.rooms[task.index].shortest() > 0 && !cavitiesOf(task).isEmpty()) {
                bakes.computeIfAbsent(cavitiesOf(task), key -> new ArrayList<>()).add(task);
            }
        }
        List<Resource> all = new ArrayList<>();
        for (List<Integer> group : bakes.keySet()) {
            List<Task> within = new ArrayList<>();
            bakes.forEach((those, tasks) -> within.addAll(group.containsAll(those) ? tasks : List.of()));
            boolean cools = within.stream().anyMatch(task -> task.coolsInOven);
            all.add(resource("oven area", group, cools, this::area, uses(within, pan -> area(pan, group))));
            all.add(resource("oven racks", group, cools, cavity -> cavity.racks().size(),
                    uses(within, pan -> isAlone(pan, group) ? 1 : 0)));
        }
        return all;
    }

    /** By task: a bake whose pans leave no room for another such bake, so that no two go in or come out together. */
    boolean[] alone() {
        boolean[] alone = new boolean[net.size()];
        List<Integer> all = IntStream.range(0, cavities.size()).boxed().toList();
        boolean singleRacks = cavities.stream().allMatch(cavity -> cavity.racks().size() == 1);
        for (Task task : compiled.tasks) {
            alone[task.index] = !task.bakes || singleRacks
                    && task.step.oven().orElseThrow().pans().stream().anyMatch(pan -> isAlone(pan, all));
        }
        return alone;
    }

    private List<Integer> cavitiesOf(Task task) {
        return IntStream.range(0, cavities.size())
                .filter(cavity -> Rooms.suits(cavities.get(cavity), task.step.oven().orElseThrow())).boxed().toList();
    }

    private List<Use> uses(List<Task> bakes, ToLongFunction<Pan> weight) {
        List<Use> uses = new ArrayList<>();
        for (Task task : bakes) {
            long taken = task.step.oven().orElseThrow().pans().stream().mapToLong(weight).sum();
            if (taken > 0) {
                uses.add(Use.all(task.index, net.rooms[task.index].shortest(), taken));
            }
        }
        return uses;
    }

    private long area(Pan pan, List<Integer> group) {
        return group.stream().mapToLong(one -> Area.taken(pan.footprint(), cavities.get(one).panGapMm())).min().orElse(0);
    }

    private long area(Cavity cavity) {
        return cavity.racks().stream().mapToLong(rack -> Area.given(rack.widthMm(), rack.depthMm(), cavity.wallGapMm(),
                cavity.panGapMm())).sum();
    }

    private boolean isAlone(Pan pan, List<Integer> group) {
        for (int one : group) {
            Cavity cavity = cavities.get(one);
            for (Rack rack : cavity.racks()) {
                if (!Area.isAlone(pan.footprint(), rack.widthMm(), rack.depthMm(), cavity.wallGapMm(), cavity.panGapMm())) {
                    return false;
                }
            }
        }
        return true;
    }

    private Resource resource(String name, List<Integer> group, boolean cools, ToLongFunction<Cavity> size, List<Use> uses) {
        long[] perMinute = new long[compiled.horizon];
        long peak = 0;
        for (int cavity : group) {
            long[] calendar = cools ? calendars.there[cavity] : calendars.hot[cavity];
            long each = size.applyAsLong(cavities.get(cavity));
            peak += each;
            for (int minute = 0; minute < perMinute.length; minute++) {
                perMinute[minute] += Bits.get(calendar, minute) ? each : 0;
            }
        }
        return new Resource(name, Supply.of(perMinute, 0), peak, uses);
    }
}
