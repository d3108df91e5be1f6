package crumbclock.app.replan;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Repair.Missed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How things stand now.
 *
 * @param problem  the whole problem as it is by now: without what is broken or ill, with batches that are made again, with what
 *                 is skipped left out, nothing new before now, and with the plan to keep to
 * @param old      the plan that people have
 * @param happened what has begun, by step
 * @param lostAt   minute from which on the work on a step is lost, by step
 * @param again    batches that are made a second time and that the problem did not have before
 * @param notes    what was assumed
 */
record Situation(Problem problem, OldPlan old, int now, Map<String, Happened> happened, Map<String, Integer> lostAt,
        List<BatchAgain> again, List<DayNote> notes) {

    private static final int MOST_ROUNDS = 3;

    /**
     * @param settled    by step, the minute up to which the old plan counts what was recorded of it for nothing
     * @param ahead      ids of repairs that are done though nothing is missed yet, because it will be
     * @param begunAgain what is to be made from the start, though nobody wrote that it is lost
     */
    static Situation of(Problem base, OldPlan old, DayLog log, int now, Map<String, Integer> settled, List<Loss> begunAgain, Set<String> ahead) {
        List<BatchAgain> again = new ArrayList<>();
        List<Loss> more = begunAgain;
        Problem changed = skipped(slower(new KitchenNow(log.kitchen()).in(base), old, log, now), log);
        for (int round = 0;; round++) {
            Set<DayNote> notes = new LinkedHashSet<>(log.notes());
            for (Loss loss : begunAgain) {
                notes.add(new DayNote(0, "no way was found to go on with what is there for " + loss.stepId() + (loss.whole() ? "; it is begun again from the start" : "; it is done again")));
            }
            var losses = new Losses(changed, old, now);
            losses.take(log, notes::add);
            losses.take(more);
            again.addAll(losses.again());
            Map<String, Integer> forgotten = new LinkedHashMap<>(settled);
            losses.lostAt().forEach((id, minute) -> forgotten.merge(id, minute, Math::max));
            var records = new Records(log.steps(), old, now, forgotten, notes::add);
            tellStrangers(log, old, notes);
            Map<String, Happened> happened = new DayStory(losses.problem(), old, records, log, losses.lostAt().keySet(), now, notes::add).tell();
            List<Loss> tooOld = tooOld(losses.problem(), happened, now);
            tooOld.addAll(inDeadOvens(log, losses.problem(), old, records, happened, now));
            if (tooOld.isEmpty() || round == MOST_ROUNDS) {
                List<Repair> repairs = Repairs.wanted(losses.problem(), happened, now);
                repairs = Stream.concat(repairs.stream(), losses.problem().repairs().stream().filter(one -> ahead.contains(one.id()))).distinct().toList();
                repairs.forEach(repair -> notes.add(new DayNote(0, note(repair))));
                Problem repaired = Repairs.with(losses.problem(), repairs.stream().map(Repair::id).toList());
                Problem rest = repaired.withEachStep(step -> happened.containsKey(step.id()) ? step
                        : StepCopies.notBefore(step, now));
                return new Situation(rest.withKept(kept(old, now, happened, losses.lostAt().keySet())), old, now, happened, losses.lostAt(),
                        List.copyOf(again), List.copyOf(notes));
            }
            changed = losses.problem();
            more = new ArrayList<>(more);
            more.addAll(tooOld);
        }
    }

    private static String note(Repair repair) {
        String missed = repair.missed().contains(Missed.REST_TOO_SHORT) ? " was too short" : repair.missed().contains(Missed.WAIT_TOO_LONG)
                ? " is over for longer than allowed" : " goes on, or went on, for longer than allowed";
        return repair.fromStepId() + missed + "; before " + repair.toStepId() + ", \"" + repair.steps().get(0).name() + "\", as its method says";
    }

    /** A batch that cannot be used any more, because its most wait is over, is made again for the cakes that still need it. */
    private static List<Loss> tooOld(Problem problem, Map<String, Happened> happened, int now) {
        Set<String> batches = new LinkedHashSet<>();
        problem.batches().forEach(batch -> batches.add(batch.id()));
        Map<String, Step> steps = new LinkedHashMap<>();
        problem.steps().forEach(step -> steps.put(step.id(), step));
        List<Loss> losses = new ArrayList<>();
        for (Wait wait : problem.waits()) {
            Happened from = happened.get(wait.fromStepId());
            Step to = steps.get(wait.toStepId());
            if (from != null && !from.open() && wait.hasMost() && (long) from.end() + wait.mostMinutes() < now
                    && !happened.containsKey(to.id()) && batches.contains(steps.get(wait.fromStepId()).ownerId())
                    && !batches.contains(to.ownerId())) {
                losses.add(new Loss(0, to.id(), now, true));
            }
        }
        return losses;
    }

    /** Bakes that were in an oven when it went off, by what happened and not by the plan. */
    private static List<Loss> inDeadOvens(DayLog log, Problem problem, OldPlan old, Records records, Map<String, Happened> happened,
            int now) {
        List<Loss> losses = new ArrayList<>();
        for (KitchenEvent event : log.kitchen()) {
            int at = event.when().start();
            boolean all = event.kind() == KitchenEvent.Kind.POWER_CUT;
            if (at > now || !all && event.kind() != KitchenEvent.Kind.OVEN_DEAD) {
                continue;
            }
            for (Step step : problem.steps()) {
                Happened so = happened.get(step.id());
                if (step.oven().isPresent() && so != null && so.start() < at && at < so.end() && records.done(step.id()).isEmpty()
                        && (all || old.find(step.id()).filter(one -> one.cavityId().equals(event.id())).isPresent())) {
                    losses.add(new Loss(0, step.id(), at, true));
                }
            }
        }
        return losses;
    }

    private static void tellStrangers(DayLog log, OldPlan old, Set<DayNote> notes) {
        for (StepEvent event : log.steps()) {
            for (String id : event.stepIds()) {
                if (old.find(id).isEmpty() && event.word() != DayWord.SKIP) {
                    notes.add(new DayNote(event.line(), id + " is not in the plan; what is said of it is left aside"));
                }
            }
        }
    }

    /** What is told to take longer and has not begun will take longer when it does. */
    private static Problem slower(Problem problem, OldPlan old, DayLog log, int now) {
        Map<String, Integer> longer = new LinkedHashMap<>();
        for (StepEvent event : log.steps()) {
            for (String id : event.stepIds()) {
                boolean toCome = old.find(id).isPresent() && old.find(id).get().start() >= now && log.steps().stream()
                        .noneMatch(other -> other.stepIds().contains(id) && (other.word() == DayWord.STARTED || other.word() == DayWord.DONE));
                if (event.word() == DayWord.SLOWER && toCome) {
                    longer.merge(id, event.minutes(), Integer::sum);
                }
            }
        }
        return problem.withEachStep(step -> step.handsOn().isEmpty() || !longer.containsKey(step.id()) ? step
                : step.withHandsOn(longer(step.handsOn().get(), longer.get(step.id()))));
    }

    static HandsOn longer(HandsOn work, int minutes) {
        return new HandsOn(work.minutes() + minutes, work.people(), work.skill(), work.workKind(), work.mayPutDown(), work.away(),
                work.finish());
    }

    private static Problem skipped(Problem problem, DayLog log) {
        Set<String> skipped = new LinkedHashSet<>();
        log.steps().stream().filter(event -> event.word() == DayWord.SKIP).forEach(event -> skipped.addAll(event.stepIds()));
        return problem.withEachStep(step -> skipped.contains(step.id()) ? StepCopies.skipped(step) : step);
    }

    private static KeptPlan kept(OldPlan old, int now, Map<String, Happened> happened, Set<String> lost) {
        KeptPlan known = KeptPlan.of(old.timetable(), now);
        return new KeptPlan(now, known.steps().stream()
                .filter(step -> !happened.containsKey(step.stepId()) && !lost.contains(step.stepId())).toList());
    }

    /** Steps that are still to be done. */
    Set<String> toDo() {
        Set<String> toDo = new LinkedHashSet<>();
        problem.steps().stream().map(Step::id).filter(id -> !happened.containsKey(id)).forEach(toDo::add);
        return toDo;
    }

    /** The order that a step belongs to; empty for a batch. */
    Optional<String> orderOf(String stepId) {
        String owner = problem.steps().stream().filter(step -> step.id().equals(stepId)).map(Step::ownerId).findFirst().orElse("");
        return problem.orders().stream().filter(order -> order.id().equals(owner)
                || order.cakes().stream().anyMatch(cake -> cake.id().equals(owner))).map(order -> order.id()).findFirst();
    }
}
