package crumbclock.engine.book;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.work.Pan;
import crumbclock.engine.book.CavityBook.Bake;
import crumbclock.engine.model.Task;
import crumbclock.engine.shelf.SpotFinder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the pans stand in one cavity (rule R07). */
final class OvenRacks {

    private final Cavity cavity;
    private final SpotFinder finder = new SpotFinder(16);
    private final Map<Task, List<PanPlace>> places = new HashMap<>();
    private final List<PanPlace> found = new ArrayList<>();

    OvenRacks(Cavity cavity) {
        this.cavity = cavity;
    }

    void reset() {
        places.clear();
    }

    /** Whether all pans have room beside those of the bakes that are in at an overlapping time. */
    boolean find(Bake bake, List<Bake> bakes, int first) {
        found.clear();
        List<Pan> pans = bake.task().step.oven().orElseThrow().pans();
        for (int pan = 0; pan < pans.size(); pan++) {
            if (!find(bake, pan, pans.get(pan), bakes, first)) {
                return false;
            }
        }
        return true;
    }

    private boolean find(Bake bake, int pan, Pan shape, List<Bake> bakes, int first) {
        for (int rack = 0; rack < cavity.racks().size(); rack++) {
            Rack level = cavity.racks().get(rack);
            if (shape.heightMm() > level.clearHeightMm()) {
                continue;
            }
            finder.clear();
            for (int at = first; at < bakes.size() && bakes.get(at).start() < bake.end(); at++) {
                Bake other = bakes.get(at);
                if (bake.start() < other.end()) {
                    addNeighbours(other.task(), places.get(other.task()), rack);
                }
            }
            addNeighbours(bake.task(), found, rack);
            if (finder.find(level.widthMm(), level.depthMm(), cavity.panGapMm(), cavity.wallGapMm(),
                    shape.footprint().round(), shape.footprint().widthMm(), shape.footprint().depthMm(), true)) {
                found.add(new PanPlace(bake.task().step.id(), pan, cavity.id(), rack, finder.xMm(), finder.yMm(),
                        finder.turned()));
                return true;
            }
        }
        return false;
    }

    private void addNeighbours(Task task, List<PanPlace> standing, int rack) {
        List<Pan> pans = task.step.oven().orElseThrow().pans();
        for (PanPlace place : standing) {
            if (place.rack() == rack) {
                Pan pan = pans.get(place.pan());
                int width = place.turned() ? pan.footprint().depthMm() : pan.footprint().widthMm();
                int depth = place.turned() ? pan.footprint().widthMm() : pan.footprint().depthMm();
                finder.addNeighbour(pan.footprint().round(), place.xMm(), place.yMm(), width, depth);
            }
        }
    }

    void take(Task task) {
        places.put(task, List.copyOf(found));
    }

    void force(Task task, List<PanPlace> pans) {
        places.put(task, List.copyOf(pans));
    }

    void giveBack(Task task) {
        places.remove(task);
    }

    List<PanPlace> places(Task task) {
        return places.getOrDefault(task, List.of());
    }
}
