package crumbclock.app.replan;

import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A timetable by step, with records of its steps at other times. */
final class OldPlan {

    private final Timetable timetable;
    private final Map<String, PlacedStep> placed = new LinkedHashMap<>();

    OldPlan(Timetable timetable) {
        this.timetable = timetable;
        timetable.steps().forEach(step -> placed.put(step.stepId(), step));
    }

    Timetable timetable() {
        return timetable;
    }

    Optional<PlacedStep> find(String stepId) {
        return Optional.ofNullable(placed.get(stepId));
    }

    /** The step with all that belongs to it, as it was planned. */
    FixedStep record(PlacedStep step) {
        return new FixedStep(step, of(timetable.touches(), PlacedTouch::stepId, step), of(timetable.pans(), PanPlace::stepId, step),
                of(timetable.placements(), Placement::stepId, step));
    }

    private static <T> List<T> of(List<T> all, java.util.function.Function<T, String> id, PlacedStep step) {
        return all.stream().filter(one -> id.apply(one).equals(step.stepId())).toList();
    }

    /**
     * The same by the same people at the same places, at other times.
     *
     * @param until end of each later step at which equipment is given back, by id; its planned end where it is missing
     */
    FixedStep record(Step step, PlacedStep planned, int start, int end, Map<String, Integer> until) {
        FixedStep old = record(planned);
        List<UnitUse> units = new ArrayList<>();
        for (UnitUse use : planned.units()) {
            String last = givenBackBy(step, use);
            int back = last.equals(step.id()) ? end : until.getOrDefault(last, Math.max(end, use.until()));
            units.add(new UnitUse(use.poolId(), use.unit(), start, back));
        }
        List<PersonWork> work = planned.work().stream()
                .map(one -> new PersonWork(one.personId(), moved(one.spans(), planned.start(), start, end))).toList();
        Span span = new Span(start, end);
        return new FixedStep(new PlacedStep(step.id(), start, end, work, units, planned.surfaceId(), planned.cavityId()),
                old.touches().stream().map(touch -> touch(touch, span)).toList(), old.pans(),
                old.placements().stream().map(one -> at(one, span)).toList());
    }

    /** The step at whose end a piece is free again. */
    String givenBackBy(Step step, UnitUse use) {
        List<EquipmentNeed> needs = step.equipment().stream().filter(need -> need.poolId().equals(use.poolId())).toList();
        for (EquipmentNeed need : needs) {
            PlacedStep last = placed.get(need.untilStepId());
            if (last != null && last.end() == use.until()) {
                return need.untilStepId();
            }
        }
        return needs.isEmpty() ? step.id() : needs.get(0).untilStepId();
    }

    private static PlacedTouch touch(PlacedTouch touch, Span step) {
        int minutes = touch.when().minutes();
        return new PlacedTouch(touch.stepId(), touch.at(), touch.personId(), touch.at() == TouchEnd.PUT_IN
                ? new Span(step.start(), step.start() + minutes) : new Span(step.end() - minutes, step.end()));
    }

    static Placement at(Placement one, Span when) {
        return new Placement(one.stepId(), one.piece(), one.storeId(), one.shelfId(), one.xMm(), one.yMm(), one.turned(), when);
    }

    /** As many pieces of work as were planned, as far as they fit; the last one ends when the step ends. */
    private static List<Span> moved(List<Span> spans, int planned, int start, int end) {
        List<Span> moved = new ArrayList<>();
        for (Span span : spans) {
            int from = span.start() - planned + start;
            if (from < end) {
                moved.add(new Span(from, Math.min(end, span.end() - planned + start)));
            }
        }
        if (moved.isEmpty()) {
            return moved;
        }
        int last = moved.size() - 1;
        moved.set(last, new Span(moved.get(last).start(), end));
        return moved;
    }
}
