package crumbclock.rules.fact;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Lays out touches, bakes and what stands where. */
final class PlaceReader {

    private final Map<String, Step> stepById;
    private final Map<String, TimedStep> timedById;
    private final List<Object> facts = new ArrayList<>();
    private final Map<String, PlaceKind> kindById = new HashMap<>();
    private final Map<String, Whereabouts.Stay> stays = new HashMap<>();
    private final Set<String> cavityIds = new HashSet<>();
    private int no;

    PlaceReader(Problem problem, Timetable timetable, Map<String, Step> stepById, Map<String, TimedStep> timedById) {
        this.stepById = stepById;
        this.timedById = timedById;
        for (Store store : problem.kitchen().stores()) {
            kindById.put("store " + store.id(), store.kind());
        }
        for (Surface surface : problem.kitchen().surfaces()) {
            kindById.put("surface " + surface.id(), surface.kind());
        }
        problem.kitchen().cavities().forEach(cavity -> cavityIds.add(cavity.id()));
        timedById.values().forEach(this::readStep);
        timetable.touches().forEach(this::readTouch);
        timetable.pans().forEach(this::readPan);
        timetable.placements().forEach(this::readPlacement);
        for (OvenRun run : timetable.ovenRuns()) {
            facts.add(new HeatRun(no++, run));
        }
        facts.add(new Whereabouts(stays));
    }

    List<Object> facts() {
        return facts;
    }

    private void readStep(TimedStep timed) {
        Step step = timed.step();
        step.putIn().ifPresent(touch -> facts.add(new TouchNeed(step.id(), TouchEnd.PUT_IN, touch,
                new Span(timed.start(), timed.start() + touch.minutes()))));
        step.takeOut().ifPresent(touch -> facts.add(new TouchNeed(step.id(), TouchEnd.TAKE_OUT, touch,
                new Span(timed.end() - touch.minutes(), timed.end()))));
        step.oven().ifPresent(oven -> readBake(timed, oven));
        step.place().ifPresent(need -> readPlaceNeed(timed, need));
    }

    /** A bake in no cavity of the kitchen meets nothing there; rule R07 tells that the cavity is wrong. */
    private void readBake(TimedStep timed, OvenUse oven) {
        if (cavityIds.contains(timed.placed().cavityId())) {
            facts.add(new Bake(no++, timed.step(), oven, timed.placed()));
        }
        for (int pan = 0; pan < oven.pans().size(); pan++) {
            facts.add(new PanNeed(timed.id(), pan, timed.placed().cavityId(), timed.span()));
        }
    }

    private void readPlaceNeed(TimedStep timed, PlaceNeed need) {
        String surfaceId = timed.placed().surfaceId();
        if (!surfaceId.isEmpty()) {
            facts.add(new OnSurface(no++, timed.step(), need, surfaceId, timed.span()));
            PlaceKind kind = kindById.get("surface " + surfaceId);
            if (kind != null) {
                stays.put(timed.id(), new Whereabouts.Stay(kind, timed.span()));
            }
        } else if (!timed.isHandsOn() && mayUseShelf(need)) {
            for (int piece = 0; piece < need.form().pieces(); piece++) {
                facts.add(new PlaceDue(timed.id(), piece, timed.span()));
            }
        }
    }

    /** What can stand on racks and benches only lacks a surface, not a shelf, when it has neither. */
    private static boolean mayUseShelf(PlaceNeed need) {
        return need.allowed().stream().anyMatch(PlaceKind::hasShelves);
    }

    private void readTouch(PlacedTouch touch) {
        TimedStep timed = timedById.get(touch.stepId());
        if (timed == null) {
            addStray(Rule.R04, touch.stepId(), touch.personId(), touch.when(), "a touch of a step that is not placed");
            return;
        }
        facts.add(new GivenTouch(no++, touch, timed.step().oven().isPresent() ? timed.placed().cavityId() : ""));
    }

    private void readPan(PanPlace place) {
        TimedStep timed = timedById.get(place.stepId());
        if (timed == null) {
            addStray(Rule.R07, place.stepId(), place.cavityId(), new Span(0, 0), "a pan of a step that is not placed");
            return;
        }
        List<Pan> pans = timed.step().oven().map(OvenUse::pans).orElse(List.of());
        if (place.pan() < 0 || place.pan() >= pans.size()) {
            addStray(Rule.R07, place.stepId(), place.cavityId(), timed.span(),
                    "pan number " + place.pan() + " of a step that has " + pans.size() + " pans");
            return;
        }
        Pan pan = pans.get(place.pan());
        Shape shape = Shape.of(pan.footprint(), place.xMm(), place.yMm(), place.turned());
        facts.add(new StandingPan(no++, place, pan, shape, timed.placed().cavityId(), timed.span()));
    }

    private void readPlacement(Placement placement) {
        String place = placement.storeId() + "/" + placement.shelfId();
        TimedStep timed = timedById.get(placement.stepId());
        if (timed == null) {
            addStray(Rule.R10, placement.stepId(), place, placement.when(),
                    "something stands there of a step that is not placed");
            return;
        }
        boolean onSurface = timed.isHandsOn() || !timed.placed().surfaceId().isEmpty();
        int pieces = onSurface ? 0 : timed.step().place().map(need -> need.form().pieces()).orElse(0);
        if (placement.piece() < 0 || placement.piece() >= pieces) {
            addStray(Rule.R10, placement.stepId(), place, placement.when(),
                    "piece number " + placement.piece() + " of a step that has " + pieces + " pieces on shelves");
            return;
        }
        addStanding(timed.step(), timed.step().place().orElseThrow().form(), placement);
    }

    private void addStanding(Step step, Form form, Placement placement) {
        Shape shape = Shape.of(form.footprint(), placement.xMm(), placement.yMm(), placement.turned());
        facts.add(new Standing(no, placement, step, form, shape));
        String name = form.pieces() == 1 ? step.id() : "piece " + placement.piece() + " of " + step.id();
        facts.add(new OnShelf(no++, step.id(), placement.piece(), name, placement.storeId(), placement.shelfId(), shape,
                form.massGrams(), FarMinutes.clip(placement.when())));
        PlaceKind kind = kindById.get("store " + placement.storeId());
        if (placement.piece() == 0 && kind != null) {
            stays.putIfAbsent(step.id(), new Whereabouts.Stay(kind, FarMinutes.clip(placement.when())));
        }
    }

    private void addStray(Rule rule, String stepId, String place, Span when, String message) {
        boolean known = stepById.containsKey(stepId);
        facts.add(known ? new Stray(rule, stepId, place, when, message)
                : new Stray(Rule.R17, stepId, place, when, message + " and that the problem does not know"));
    }
}
