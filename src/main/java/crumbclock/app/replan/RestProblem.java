package crumbclock.app.replan;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The problem that is left to be planned, in a form that the engine knows: what has begun is fixed; a stay whose end is
 * still to be found is fixed up to now, and goes on as a step of its own; waits that are broken in fact count again from now.
 *
 * <p>A piece of equipment that is held beyond now, until a step that is still to come, is taken anew now by a step that takes no
 * time. A place on a shelf is kept free for some minutes longer than was planned, or until a pinned step needs it.
 */
final class RestProblem {

    static final String ON = "/on";
    static final String HELD = "/held";
    /** Minutes beyond its planned end for which a place is kept free. */
    static final int ROOM = 240;

    private final Problem whole;
    private final WorkGraph graph;
    private final Set<Wait> mended;
    private final OldPlan old;
    private final OldPlan base;
    private final Map<String, Happened> happened;
    private final int now;
    private final int room;
    private final Map<String, FixedStep> pins = new LinkedHashMap<>();
    /** End of each stay that ends with a pinned step, by id. */
    private final Map<String, Integer> ends = new LinkedHashMap<>();
    private final Set<String> goingOn = new LinkedHashSet<>();

    /**
     * @param base the timetable that the pins are taken from: the old plan, or a better one
     * @param pins steps that are to stay where they are
     * @param room minutes beyond its planned end for which the place of a stay that goes on is kept free
     */
    RestProblem(Problem whole, OldPlan old, OldPlan base, Map<String, Happened> happened, int now, List<FixedStep> pins, int room) {
        this.room = room;
        this.base = base;
        this.whole = whole;
        this.graph = new WorkGraph(whole);
        this.mended = Repairs.mended(whole);
        this.old = old;
        this.happened = happened;
        this.now = now;
        pins.forEach(pin -> this.pins.put(pin.step().stepId(), pin));
        happened.forEach((id, one) -> {
            if (one.open() && !endsWithPin(id)) {
                goingOn.add(id);
            }
        });
    }

    /** The step that one of the rest problem's is, or goes on from. */
    static String original(String id) {
        return id.endsWith(ON) ? id.substring(0, id.length() - ON.length()) : id.endsWith(HELD) ? id.substring(0, id.length() - HELD.length()) : id;
    }

    private boolean endsWithPin(String id) {
        for (Wait wait : graph.after(id)) {
            FixedStep taker = pins.get(wait.toStepId());
            if (taker != null) {
                int planned = base.find(id).map(PlacedStep::end).orElse(now);
                ends.merge(id, Stays.end(planned, taker.step().start(), wait), Math::min);
            }
        }
        return ends.containsKey(id);
    }

    Map<String, FixedStep> pins() {
        return pins;
    }

    /** Stays whose end the search has to find. */
    Set<String> goingOn() {
        return goingOn;
    }

    /** When a step that has begun ends, as far as it is known before the search. */
    int end(String id) {
        return ends.getOrDefault(id, happened.get(id).end());
    }

    /** Waits that what happened has broken already, though the second step is still to come. */
    List<Wait> broken() {
        return broken(whole, happened, now);
    }

    static List<Wait> broken(Problem whole, Map<String, Happened> happened, int now) {
        return whole.waits().stream().filter(wait -> isBroken(wait, happened, now)).toList();
    }

    private static boolean isBroken(Wait wait, Map<String, Happened> happened, int now) {
        Happened from = happened.get(wait.fromStepId());
        return from != null && !from.open() && wait.hasMost() && !happened.containsKey(wait.toStepId())
                && (long) from.end() + wait.mostMinutes() < now;
    }

    /** For the engine. */
    Problem problem() {
        List<Step> steps = new ArrayList<>();
        for (Step step : whole.steps()) {
            List<EquipmentNeed> needs = needs(step);
            boolean goesOn = goingOn.contains(step.id());
            steps.add(goesOn ? StepCopies.cutShort(step, needs) : step.withEquipment(needs));
            if (goesOn) {
                steps.add(rest(step));
            }
            if (!held(step).isEmpty()) {
                steps.add(StepCopies.moment(step, step.id() + HELD, held(step), heldFrom(step)));
            }
        }
        List<FixedStep> fixed = new ArrayList<>();
        happened.keySet().forEach(id -> fixed.add(fixed(id)));
        fixed.addAll(pins.values());
        return whole.withSteps(steps).withWaits(waits()).withLimits(coldLimits(), lifeLimits()).withFixedSteps(fixed);
    }

    private List<ColdLimit> coldLimits() {
        return whole.coldLimits().stream().filter(limit -> isWhole(limit.heldStepIds())).map(limit -> new ColdLimit(limit.id(), limit.name(),
                limit.ownerId(), last(limit.fromStepId()), limit.toStepId(), limit.heldStepIds(), limit.mostMinutesOut())).toList();
    }

    private List<LifeLimit> lifeLimits() {
        return whole.lifeLimits().stream().filter(limit -> isWhole(limit.heldStepIds())).map(limit -> new LifeLimit(limit.id(), limit.name(),
                limit.ownerId(), last(limit.fromStepId()), limit.toStepId(), limit.heldStepIds(), limit.lifeMinutes())).toList();
    }

    /** What begins when a stay ends begins when its rest ends. */
    private String last(String id) {
        return goingOn.contains(id) ? id + ON : id;
    }

    /** What a step that has begun holds until one ends that is still to come. */
    private List<EquipmentNeed> held(Step step) {
        if (!happened.containsKey(step.id())) {
            return List.of();
        }
        return step.equipment().stream().filter(need -> isToCome(need.untilStepId())).map(need -> new EquipmentNeed(need.poolId(),
                need.units(), need.amount(), goingOn.contains(need.untilStepId()) ? need.untilStepId() + ON : need.untilStepId())).toList();
    }

    private boolean isToCome(String id) {
        return goingOn.contains(id) || !happened.containsKey(id) && !pins.containsKey(id);
    }

    private int heldFrom(Step step) {
        return Math.max(now, end(step.id()));
    }

    private boolean isWhole(List<String> held) {
        return held.stream().noneMatch(goingOn::contains);
    }

    /** Recorded and pinned steps hold their pieces as long as is said, not as long as another step wants. */
    private List<EquipmentNeed> needs(Step step) {
        boolean known = happened.containsKey(step.id()) || pins.containsKey(step.id());
        boolean begun = happened.containsKey(step.id());
        return step.equipment().stream().filter(need -> !begun || !isToCome(need.untilStepId())).map(need -> {
            String until = known ? step.id() : goingOn.contains(need.untilStepId()) ? need.untilStepId() + ON : need.untilStepId();
            return new EquipmentNeed(need.poolId(), need.units(), need.amount(), until);
        }).toList();
    }

    private Step rest(Step step) {
        Happened so = happened.get(step.id());
        int rested = so.end() - so.start() - step.putInMinutes();
        int least = Math.max(0, step.leastMinutes() - rested);
        int left = step.mostMinutes() - rested;
        // longer than allowed already: as soon as may be, within the same time once more
        boolean repaired = left >= 0 && Repairs.mendedRests(whole).contains(step.id());
        int most = step.mostMinutes() == Wait.NO_MOST || repaired ? Wait.NO_MOST : Math.max(least, left >= 0 ? left : step.mostMinutes());
        Optional<PlaceNeed> place = step.place().filter(need -> old.find(step.id()).filter(one -> !one.surfaceId().isEmpty()).isPresent());
        return StepCopies.stillToStay(step, step.id() + ON, least, most, place, so.end());
    }

    private List<Wait> waits() {
        List<Wait> waits = new ArrayList<>();
        for (Wait wait : whole.waits()) {
            String from = last(wait.fromStepId());
            int most = mended.contains(wait) ? Wait.NO_MOST : wait.mostMinutes();
            if (most != Wait.NO_MOST && isBroken(wait, happened, now)) {
                most = now - happened.get(wait.fromStepId()).end() + wait.mostMinutes();
            }
            waits.add(new Wait(from, wait.toStepId(), wait.leastMinutes(), most));
        }
        goingOn.forEach(id -> waits.add(new Wait(id, id + ON, 0, 0)));
        for (Step step : whole.steps()) {
            for (EquipmentNeed need : held(step)) {
                int passed = heldFrom(step) - end(step.id());
                waits.add(new Wait(step.id(), step.id() + HELD, passed, passed));
                waits.add(new Wait(step.id() + HELD, need.untilStepId(), 0, Wait.NO_MOST));
            }
        }
        return waits;
    }

    private FixedStep fixed(String id) {
        Map<String, Integer> until = new LinkedHashMap<>();
        happened.keySet().forEach(one -> until.put(one, end(one)));
        goingOn.forEach(until::remove);
        pins.values().forEach(pin -> until.put(pin.step().stepId(), pin.step().end()));
        FixedStep record = record(id, end(id), until);
        PlacedStep step = record.step();
        // what is held beyond now is taken anew now, without being cleaned before
        List<UnitUse> units = step.units().stream().filter(use -> isKnown(id, use)).toList();
        PlacedStep held = new PlacedStep(id, step.start(), step.end(), step.work(), units, step.surfaceId(), step.cavityId());
        if (!goingOn.contains(id)) {
            return new FixedStep(held, record.touches(), record.pans(), record.placements());
        }
        List<PlacedTouch> in = record.touches().stream().filter(touch -> touch.at() == TouchEnd.PUT_IN).toList();
        return new FixedStep(held, in, record.pans(), record.placements().stream()
                .map(one -> OldPlan.at(one, new Span(one.when().start(), Math.max(one.when().end(), standsUntil(one))))).toList());
    }

    /** What has begun, as it began; what is still to be done of it is done by somebody who is there. */
    FixedStep record(String id, int end, Map<String, Integer> until) {
        FixedStep record = old.record(graph.step(id), old.find(id).orElseThrow(), happened.get(id).start(), end, until);
        List<PlacedTouch> touches = record.touches().stream().map(touch -> touch.when().start() < now ? touch
                : new PlacedTouch(id, touch.at(), toucher(touch, end), touch.when())).toList();
        return new FixedStep(record.step(), touches, record.pans(), record.placements());
    }

    private String toucher(PlacedTouch touch, int end) {
        String known = base.find(touch.stepId()).filter(step -> step.end() == end).map(step -> base.record(step).touches().stream()
                .filter(other -> other.at() == touch.at()).map(PlacedTouch::personId).findFirst().orElse(touch.personId()))
                .orElse(touch.personId());
        String skill = graph.step(touch.stepId()).takeOut().map(Touch::skill).orElse("");
        List<Person> there = whole.kitchen().people().stream().filter(person -> person.hasSkill(skill) && person.mostMinutesADay() > 0
                && Pins.isOnShift(person, touch.when())).toList();
        return there.isEmpty() || there.stream().anyMatch(person -> person.id().equals(known)) ? known : there.get(0).id();
    }

    private boolean isKnown(String id, UnitUse use) {
        return !isToCome(old.givenBackBy(graph.step(id), new UnitUse(use.poolId(), use.unit(), use.from(),
                plannedUntil(id, use))));
    }

    private int plannedUntil(String id, UnitUse use) {
        return old.find(id).orElseThrow().units().stream().filter(one -> one.poolId().equals(use.poolId()) && one.unit() == use.unit())
                .mapToInt(UnitUse::until).findFirst().orElse(use.until());
    }

    private int standsUntil(Placement one) {
        int planned = old.find(one.stepId()).map(PlacedStep::end).orElse(now);
        int until = Math.min(whole.clock().horizonMinutes(), Math.max(planned, now) + room);
        for (FixedStep pin : pins.values()) {
            for (Placement other : pin.placements()) {
                if (other.storeId().equals(one.storeId()) && other.shelfId().equals(one.shelfId()) && other.when().start() >= planned) {
                    until = Math.min(until, other.when().start());
                }
            }
        }
        return until;
    }
}
