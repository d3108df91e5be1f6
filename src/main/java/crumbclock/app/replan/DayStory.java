package crumbclock.app.replan;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Works out from what was written down, and from the plan where nothing was, which steps have begun, and when each was
 * or will be over. What is assumed is told.
 */
final class DayStory {

    private final WorkGraph graph;
    private final OldPlan old;
    private final Records records;
    private final DayLog log;
    private final Set<String> lost;
    private final int now;
    private final Consumer<DayNote> notes;
    private final Map<String, Happened> happened = new LinkedHashMap<>();
    private int asPlanned;
    private int late;

    DayStory(Problem problem, OldPlan old, Records records, DayLog log, Set<String> lost, int now, Consumer<DayNote> notes) {
        this.graph = new WorkGraph(problem);
        this.old = old;
        this.records = records;
        this.log = log;
        this.lost = lost;
        this.now = now;
        this.notes = notes;
    }

    /** By step: what has begun; every other step is still to be done. */
    Map<String, Happened> tell() {
        List<PlacedStep> byTime = old.timetable().steps().stream().filter(step -> graph.holds(step.stepId()))
                .sorted(Comparator.comparingInt(PlacedStep::start).thenComparing(PlacedStep::stepId)).toList();
        byTime.stream().filter(step -> records.knows(step.stepId())).forEach(this::recorded);
        inferred();
        List<PlacedStep> unknown = new ArrayList<>(byTime.stream().filter(step -> !happened.containsKey(step.stepId())
                && !lost.contains(step.stepId()) && step.start() < now).toList());
        // a step may begin a little before the end of one that it waits for, so time alone gives no order
        while (unknown.removeIf(step -> earliest(step) != Integer.MAX_VALUE && assumed(step))) {
            continue;
        }
        unknown.forEach(step -> notes.accept(new DayNote(0, step.stepId()
                + " was to begin before now, but something it waits for is not done; taken as not begun")));
        ends();
        if (asPlanned > 0) {
            notes.accept(new DayNote(0, asPlanned + (asPlanned == 1 ? " step that was planned before now and is not recorded is taken as gone as planned"
                    : " steps that were planned before now and are not recorded are taken as gone as planned")
                    + (late == 0 ? "" : ", " + late + " of them later, right after what is recorded before them")));
        }
        return happened;
    }

    private void recorded(PlacedStep planned) {
        String id = planned.stepId();
        int length = planned.end() - planned.start();
        if (records.done(id).isPresent()) {
            int end = records.done(id).getAsInt();
            int usual = planned.start() < end && end <= planned.end() ? planned.start() : Math.max(0, end - length);
            happened.put(id, new Happened(Math.min(end, records.started(id).orElse(usual)), end, false));
        } else if (records.started(id).isPresent()) {
            begun(planned, records.started(id).getAsInt(), records.slower(id));
        }
    }

    private void begun(PlacedStep planned, int start, int longer) {
        String id = planned.stepId();
        if (isStay(id)) {
            happened.put(id, new Happened(start, Math.max(now, start + graph.step(id).putInMinutes()), true));
            return;
        }
        int end = start + planned.end() - planned.start() + longer;
        if (end <= now && longer == 0 && records.knows(id)) {
            notes.accept(new DayNote(0, id + " was started and would be over by now; taken as done when it was to be"));
        }
        happened.put(id, new Happened(start, end, false));
    }

    /** A stay that goes on until something takes it out. */
    private boolean isStay(String id) {
        Step step = graph.step(id);
        return step.handsOn().isEmpty() && step.oven().isEmpty() && step.mostMinutes() > step.leastMinutes()
                && !graph.after(id).isEmpty();
    }

    /** What is done stands on something: whatever it waits for was done before, recorded or not. */
    private void inferred() {
        List<String> open = new ArrayList<>(happened.keySet());
        while (!open.isEmpty()) {
            String id = open.remove(0);
            int start = happened.get(id).start();
            for (Wait wait : graph.before(id)) {
                String before = wait.fromStepId();
                var planned = old.find(before);
                if (happened.containsKey(before) || planned.isEmpty() || records.knows(before)) {
                    continue;
                }
                int latest = start - Math.max(0, wait.leastMinutes());
                boolean fits = planned.get().end() <= latest && !lost.contains(before);
                int end = fits ? planned.get().end() : latest;
                int from = fits || isStay(before) ? Math.min(planned.get().start(), end)
                        : Math.max(0, end - (planned.get().end() - planned.get().start()));
                if (!fits) {
                    notes.accept(new DayNote(0, id + " is recorded and " + before + ", which comes before it, is not; taken as done just before"));
                } else {
                    asPlanned++;
                }
                happened.put(before, new Happened(Math.max(0, Math.min(from, end)), Math.max(0, end), false));
                open.add(before);
            }
        }
    }

    /** Always true: what is to be assumed of the step is settled. */
    private boolean assumed(PlacedStep planned) {
        String id = planned.stepId();
        int longer = records.slower(id);
        int start = earliest(planned);
        String hindrance = start >= now ? "what it waits for took too long" : hindrance(planned);
        if (!hindrance.isEmpty()) {
            notes.accept(new DayNote(0, id + " was to begin before now, but " + hindrance + "; taken as not begun"));
            return true;
        }
        if (isStay(id) || longer > 0) {
            begun(planned, start, longer);
        } else {
            happened.put(id, new Happened(start, start + planned.end() - planned.start(), false));
        }
        asPlanned++;
        late += start > planned.start() ? 1 : 0;
        return true;
    }

    /** When it can have begun, at its planned start or right after what it waited for; the largest minute when that is not done. */
    private int earliest(PlacedStep planned) {
        int start = planned.start();
        for (Wait wait : graph.before(planned.stepId())) {
            Happened before = happened.get(wait.fromStepId());
            if (before == null) {
                return Integer.MAX_VALUE;
            }
            start = before.open() ? start : Math.max(start, before.end() + wait.leastMinutes());
        }
        return start;
    }

    private String hindrance(PlacedStep planned) {
        for (PersonWork work : planned.work()) {
            String busyWith = busyWith(work.personId(), planned.start());
            if (!busyWith.isEmpty()) {
                return work.personId() + " was still busy with " + busyWith;
            }
        }
        for (KitchenEvent event : log.kitchen()) {
            boolean person = event.kind() == KitchenEvent.Kind.PERSON_AWAY && worksOn(event.id(), planned, event.when());
            boolean oven = !planned.cavityId().isEmpty() && event.when().contains(planned.start())
                    && (event.kind() == KitchenEvent.Kind.POWER_CUT
                            || event.kind() == KitchenEvent.Kind.OVEN_DEAD && event.id().equals(planned.cavityId()));
            boolean store = event.kind() == KitchenEvent.Kind.STORE_WARM && event.when().contains(now)
                    && old.timetable().placements().stream().anyMatch(one -> one.stepId().equals(planned.stepId())
                            && one.storeId().equals(event.id()) && one.when().contains(now));
            if (person || oven || store) {
                return person ? event.id() + " is not there" : oven ? "its oven is off" : event.id() + " is warm and it has to go elsewhere";
            }
        }
        return "";
    }

    /** A recorded step on which the person was working at that minute; empty for none. */
    private String busyWith(String personId, int minute) {
        for (Map.Entry<String, Happened> entry : happened.entrySet()) {
            if (records.knows(entry.getKey()) && entry.getValue().start() < minute && minute < entry.getValue().end()
                    && old.find(entry.getKey()).orElseThrow().work().stream().anyMatch(one -> one.personId().equals(personId))) {
                return entry.getKey();
            }
        }
        return "";
    }

    /** Whether the person is missed: at the beginning, or while it still goes on. */
    private boolean worksOn(String personId, PlacedStep planned, Span away) {
        for (PersonWork work : planned.work()) {
            if (work.personId().equals(personId) && planned.end() > away.start() && away.start() <= now && planned.end() > now
                    || work.personId().equals(personId) && away.contains(planned.start())) {
                return true;
            }
        }
        return false;
    }

    /** A stay is over when what takes it out has begun. */
    private void ends() {
        for (Map.Entry<String, Happened> entry : happened.entrySet()) {
            Happened stay = entry.getValue();
            if (!stay.open()) {
                continue;
            }
            int planned = old.find(entry.getKey()).orElseThrow().end();
            int taken = Integer.MAX_VALUE;
            boolean waited = false;
            for (Wait wait : graph.after(entry.getKey())) {
                Happened taker = happened.get(wait.toStepId());
                if (taker != null) {
                    taken = Math.min(taken, Stays.end(planned, taker.start(), wait));
                }
                waited |= taker == null && old.find(wait.toStepId()).filter(step -> step.start() < now).isPresent();
            }
            if (taken == Integer.MAX_VALUE && planned <= now && !waited) {
                // taken out as planned; what comes next need not follow at once
                taken = planned;
            }
            if (taken != Integer.MAX_VALUE) {
                entry.setValue(new Happened(stay.start(), Math.max(stay.start(), taken), false));
            }
        }
    }
}
