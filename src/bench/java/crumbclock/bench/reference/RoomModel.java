package crumbclock.bench.reference;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.OvenUse;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Equipment, ovens, shelves and surfaces by count and area: R06, R07 and R10, as far as {@link KitchenModel} says. */
final class RoomModel {

    /** A bake in one cavity, if it is there. */
    private record Baked(int temperatureC, IntervalVar span) {
    }

    private final CpModel model;
    private final Problem problem;
    private final Map<String, StepVars> steps;
    private final Map<PlaceKind, CumulativeConstraint> places = new EnumMap<>(PlaceKind.class);
    private final Map<PlaceKind, Integer> gaps = new EnumMap<>(PlaceKind.class);

    RoomModel(CpModel model, Problem problem, Map<String, StepVars> steps) {
        this.model = model;
        this.problem = problem;
        this.steps = steps;
    }

    void pools() {
        Map<String, CumulativeConstraint> uses = new LinkedHashMap<>();
        Map<String, Pool> pools = new LinkedHashMap<>();
        for (Pool pool : problem.kitchen().pools()) {
            CumulativeConstraint use = model.addCumulative(pool.count());
            pool.away().forEach(away -> use.addDemand(fixed(away.when()), 1));
            uses.put(pool.id(), use);
            pools.put(pool.id(), pool);
        }
        steps.values().forEach(vars -> vars.step().equipment().forEach(need -> {
            StepVars until = steps.get(need.untilStepId());
            int clean = pools.get(need.poolId()).cleanMinutes();
            LinearExpr free = LinearExpr.affine(until.end(), 1, clean);
            IntVar minutes = StepVars.between(model, vars.start(), free, problem.clock().horizonMinutes() + clean);
            uses.get(need.poolId()).addDemand(model.newIntervalVar(vars.start(), minutes, free, ""), need.units());
        }));
    }

    void ovens() {
        List<Cavity> cavities = problem.kitchen().cavities();
        List<List<Baked>> baked = new ArrayList<>();
        List<CumulativeConstraint> areas = new ArrayList<>();
        for (Cavity cavity : cavities) {
            baked.add(new ArrayList<>());
            long area = cavity.racks().stream().mapToLong(rack -> area(rack, cavity)).sum();
            CumulativeConstraint use = model.addCumulative(area);
            cavity.away().forEach(away -> use.addDemand(fixed(away), area));
            areas.add(use);
        }
        for (StepVars vars : steps.values()) {
            if (vars.step().oven().isPresent()) {
                bake(vars, vars.step().oven().get(), areas, baked);
            }
        }
        baked.forEach(this::oneTemperature);
    }

    private void bake(StepVars vars, OvenUse oven, List<CumulativeConstraint> areas, List<List<Baked>> baked) {
        List<Literal> choices = new ArrayList<>();
        for (int index = 0; index < areas.size(); index++) {
            Cavity cavity = problem.kitchen().cavities().get(index);
            if (oven.temperatureC() < cavity.leastC() || oven.temperatureC() > cavity.mostC()) {
                continue;
            }
            Literal here = model.newBoolVar("");
            IntervalVar span = model.newOptionalIntervalVar(vars.start(), vars.length(), vars.end(), here, "");
            areas.get(index).addDemand(span, oven.pans().stream()
                    .mapToLong(pan -> area(pan.footprint(), cavity.panGapMm())).sum());
            baked.get(index).add(new Baked(oven.temperatureC(), span));
            choices.add(here);
        }
        model.addExactlyOne(choices);
    }

    private void oneTemperature(List<Baked> bakes) {
        for (int one = 0; one < bakes.size(); one++) {
            for (int other = 0; other < one; other++) {
                if (bakes.get(one).temperatureC() != bakes.get(other).temperatureC()) {
                    model.addNoOverlap(List.of(bakes.get(one).span(), bakes.get(other).span()));
                }
            }
        }
    }

    void places() {
        Map<PlaceKind, Long> room = new EnumMap<>(PlaceKind.class);
        for (Store store : problem.kitchen().stores()) {
            gaps.merge(store.kind(), store.gapMm(), Math::min);
            store.shelves().forEach(shelf -> room.merge(store.kind(), area(shelf, store), Long::sum));
        }
        for (Surface surface : problem.kitchen().surfaces()) {
            room.merge(surface.kind(), (long) surface.areaMm2(), Long::sum);
        }
        room.forEach((kind, area) -> places.put(kind, model.addCumulative(area)));
        for (Store store : problem.kitchen().stores()) {
            store.shelves().forEach(shelf -> shelf.goods().forEach(goods -> places.get(store.kind())
                    .addDemand(fixed(goods.when()), area(goods, shelf))));
        }
        steps.values().stream().filter(vars -> vars.step().place().isPresent()).forEach(this::place);
    }

    private void place(StepVars vars) {
        Form form = vars.step().place().orElseThrow().form();
        List<Literal> choices = new ArrayList<>();
        for (PlaceKind kind : vars.step().place().orElseThrow().allowed()) {
            if (places.containsKey(kind)) {
                Literal here = model.newBoolVar("");
                long area = kind.hasShelves() ? area(form.footprint(), gaps.get(kind)) : form.footprint().boxAreaMm2();
                places.get(kind).addDemand(model.newOptionalIntervalVar(vars.start(), vars.length(), vars.end(), here, ""),
                        form.pieces() * area);
                choices.add(here);
            }
        }
        model.addExactlyOne(choices);
    }

    private IntervalVar fixed(Span span) {
        return model.newFixedInterval(span.start(), span.minutes(), "");
    }

    /** With half a gap on each side: what keeps the gap to others then fits into the room without walls by area. */
    private static long area(Footprint footprint, int gap) {
        long box = (long) (footprint.widthMm() + gap) * (footprint.depthMm() + gap);
        return footprint.round() ? (long) (Math.PI / 4 * box) : box;
    }

    private static long area(Rack rack, Cavity cavity) {
        int more = cavity.panGapMm() - 2 * cavity.wallGapMm();
        return (long) (rack.widthMm() + more) * (rack.depthMm() + more);
    }

    private static long area(Shelf shelf, Store store) {
        int more = store.gapMm() - 2 * store.wallGapMm();
        return (long) (shelf.widthMm() + more) * (shelf.depthMm() + more);
    }

    /** Goods may stand at the very edge, so they count without a gap, and never for more than their shelf. */
    private static long area(Goods goods, Shelf shelf) {
        return Math.min((long) goods.widthMm() * goods.depthMm(), (long) shelf.widthMm() * shelf.depthMm());
    }
}
