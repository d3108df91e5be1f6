package crumbclock.app.replan;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Which steps of a timetable can stay where they are: what is wrong in itself, or with what has happened, is let go. */
final class Pins {

    private final Problem problem;
    private final WorkGraph graph;
    private final Set<Wait> mended;
    private final OldPlan base;
    private final Map<String, Happened> happened;
    private final int now;
    private final Map<String, FixedStep> pins = new LinkedHashMap<>();

    private Pins(Problem problem, OldPlan base, Map<String, Happened> happened, int now) {
        this.problem = problem;
        this.graph = new WorkGraph(problem);
        this.mended = Repairs.mended(problem);
        this.base = base;
        this.happened = happened;
        this.now = now;
    }

    /**
     * @param base  the timetable that they are taken from
     * @param freed steps that are not to be pinned
     */
    static List<FixedStep> of(Problem problem, OldPlan base, Map<String, Happened> happened, int now, Set<String> freed) {
        var pins = new Pins(problem, base, happened, now);
        for (PlacedStep step : base.timetable().steps()) {
            String id = step.stepId();
            if (pins.graph.holds(id) && !happened.containsKey(id) && !freed.contains(id) && step.start() >= now) {
                pins.pins.put(id, base.record(step));
            }
        }
        pins.letGo();
        return List.copyOf(pins.pins.values());
    }

    private void letGo() {
        pins.values().removeIf(pin -> !isThere(pin));
        boolean again = true;
        while (again) {
            Set<String> wrong = new LinkedHashSet<>();
            for (FixedStep pin : pins.values()) {
                if (!keepsWaits(pin.step()) || !givesBack(pin.step())) {
                    wrong.add(pin.step().stepId());
                }
            }
            again = pins.keySet().removeAll(wrong);
        }
    }

    /** Its people are on shift, its oven and its shelf can be used, and it takes as long as it did. */
    private boolean isThere(FixedStep pin) {
        if (!isOfThisKitchen(pin)) {
            return false;
        }
        Step step = graph.step(pin.step().stepId());
        if (step.handsOn().isPresent() && !pin.step().work().isEmpty() != step.handsOn().get().minutes() > 0) {
            return false;
        }
        for (PersonWork work : pin.step().work()) {
            Person person = person(work.personId());
            int minutes = work.spans().stream().mapToInt(Span::minutes).sum();
            boolean slower = pin.step().work().size() == 1
                    && minutes != person.minutesAtOwnPace(step.handsOn().get().workKind(), step.handsOn().get().minutes());
            if (slower || !work.spans().stream().allMatch(span -> isOnShift(person, span))) {
                return false;
            }
        }
        for (PlacedTouch touch : pin.touches()) {
            if (!isOnShift(person(touch.personId()), touch.when())) {
                return false;
            }
        }
        for (Placement one : pin.placements()) {
            if (problem.kitchen().stores().stream().anyMatch(store -> store.id().equals(one.storeId())
                    && store.away().stream().anyMatch(away -> away.overlaps(one.when())))) {
                return false;
            }
        }
        return problem.kitchen().cavities().stream().noneMatch(cavity -> cavity.id().equals(pin.step().cavityId())
                && cavity.away().stream().anyMatch(away -> away.overlaps(pin.step().span())));
    }

    /** A plan may come from a kitchen with more in it. */
    private boolean isOfThisKitchen(FixedStep pin) {
        var kitchen = problem.kitchen();
        boolean people = Stream.concat(pin.step().work().stream().map(PersonWork::personId), pin.touches().stream().map(PlacedTouch::personId))
                .allMatch(id -> kitchen.people().stream().anyMatch(person -> person.id().equals(id)));
        boolean pieces = pin.step().units().stream().allMatch(use -> kitchen.pools().stream()
                .anyMatch(pool -> pool.id().equals(use.poolId()) && use.unit() < pool.count()));
        boolean shelves = pin.placements().stream().allMatch(one -> kitchen.stores().stream().anyMatch(store -> store.id().equals(one.storeId())
                && store.shelves().stream().anyMatch(shelf -> shelf.id().equals(one.shelfId()))));
        boolean oven = pin.step().cavityId().isEmpty() || kitchen.cavities().stream().anyMatch(one -> one.id().equals(pin.step().cavityId()));
        boolean surface = pin.step().surfaceId().isEmpty() || kitchen.surfaces().stream().anyMatch(one -> one.id().equals(pin.step().surfaceId()));
        return people && pieces && shelves && oven && surface;
    }

    private Person person(String id) {
        return problem.kitchen().people().stream().filter(person -> person.id().equals(id)).findFirst().orElseThrow();
    }

    static boolean isOnShift(Person person, Span span) {
        return person.shifts().stream().anyMatch(shift -> shift.contains(span))
                && person.breaks().stream().noneMatch(pause -> pause.overlaps(span));
    }

    private boolean keepsWaits(PlacedStep step) {
        for (Wait wait : graph.before(step.stepId())) {
            Happened before = happened.get(wait.fromStepId());
            FixedStep pinned = pins.get(wait.fromStepId());
            if (mended.contains(wait)) {
                continue; // the repair in between has waits of its own
            }
            if (before != null && before.open()) {
                if (!staysRight(wait, before, step)) {
                    return false;
                }
            } else if (before != null || pinned != null) {
                long waited = (long) step.start() - (before != null ? before.end() : pinned.step().end());
                if (waited < wait.leastMinutes() || wait.hasMost() && waited > wait.mostMinutes() && !isBrokenInFact(wait, before)) {
                    return false;
                }
            } else if (base.find(wait.fromStepId()).isEmpty()) {
                return false; // what comes before it has no place yet
            }
        }
        return true;
    }

    private boolean isBrokenInFact(Wait wait, Happened before) {
        return before != null && (long) before.end() + wait.mostMinutes() < now;
    }

    /** The stay before it lasts long enough, and not too long, when this takes it out. */
    private boolean staysRight(Wait wait, Happened stay, PlacedStep taker) {
        Step held = graph.step(wait.fromStepId());
        int end = Stays.end(base.find(held.id()).map(PlacedStep::end).orElse(now), taker.start(), wait);
        int rested = end - stay.start() - held.putInMinutes() - held.takeOutMinutes();
        boolean tooLongAlready = held.mostMinutes() != Wait.NO_MOST && now - stay.start() > held.mostMinutes();
        boolean touched = held.takeOut().isEmpty() || base.find(held.id()).filter(one -> one.end() == end).isPresent();
        return touched && end >= stay.end() && rested >= held.leastMinutes() && (tooLongAlready || rested <= held.mostMinutes());
    }

    /** What it takes is given back by steps that are known as well. */
    private boolean givesBack(PlacedStep step) {
        for (UnitUse use : step.units()) {
            String last = base.givenBackBy(graph.step(step.stepId()), use);
            if (!last.equals(step.stepId()) && !pins.containsKey(last)) {
                return false;
            }
        }
        return true;
    }
}
