package crumbclock.app.replan;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Repair.Missed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Repairs in a problem. One that is done has its steps among the problem's steps. A wait that it makes good stays in the problem, so
 * that the audit tells that it was missed, and holds nobody up any more; where it makes good the rest before it, its own waits take that one's place.
 */
final class Repairs {

    private Repairs() {
    }

    /** The problem with these repairs done, as far as it knows them and does not have them yet. */
    static Problem with(Problem problem, Collection<String> ids) {
        Problem changed = problem;
        for (Repair repair : problem.repairs()) {
            if (ids.contains(repair.id()) && !isDone(changed, repair)) {
                changed = with(changed, repair);
            }
        }
        return changed;
    }

    private static Problem with(Problem problem, Repair repair) {
        List<Step> steps = new ArrayList<>();
        for (Step step : problem.steps()) {
            if (step.id().equals(repair.toStepId())) {
                repair.steps().forEach(one -> steps.add(StepCopies.notBefore(one, step.earliest())));
            }
            steps.add(step);
        }
        boolean told = repair.missed().contains(Missed.WAIT_TOO_LONG);
        List<Wait> waits = new ArrayList<>(problem.waits().stream().map(wait -> told || !repair.isOf(wait) ? wait
                : new Wait(wait.fromStepId(), wait.toStepId(), wait.leastMinutes(), Wait.NO_MOST)).toList());
        waits.addAll(repair.waits());
        return problem.withSteps(steps).withWaits(waits);
    }

    private static boolean isDone(Problem problem, Repair repair) {
        return problem.steps().stream().anyMatch(step -> step.id().equals(repair.id()));
    }

    /** Repairs that are done. */
    static List<Repair> done(Problem problem) {
        Set<String> ids = new LinkedHashSet<>();
        problem.steps().forEach(step -> ids.add(step.id()));
        return problem.repairs().stream().filter(repair -> ids.contains(repair.id())).toList();
    }

    /** Steps whose most rest holds nobody up any more. */
    static Set<String> mendedRests(Problem problem) {
        Set<String> ids = new LinkedHashSet<>();
        done(problem).stream().filter(repair -> repair.missed().contains(Missed.REST_TOO_LONG)).forEach(repair -> ids.add(repair.fromStepId()));
        return ids;
    }

    /** Waits whose most holds nobody up any more. */
    static Set<Wait> mended(Problem problem) {
        List<Repair> done = done(problem).stream().filter(repair -> repair.missed().contains(Missed.WAIT_TOO_LONG)).toList();
        Set<Wait> mended = new LinkedHashSet<>();
        problem.waits().stream().filter(wait -> done.stream().anyMatch(repair -> repair.isOf(wait))).forEach(mended::add);
        return mended;
    }

    /** Repairs of what was missed by now and can still be made good, but for those that are done. */
    static List<Repair> wanted(Problem problem, Map<String, Happened> happened, int now) {
        Map<String, Step> steps = new LinkedHashMap<>();
        problem.steps().forEach(step -> steps.put(step.id(), step));
        return open(problem, happened).stream().filter(repair -> {
            Step from = steps.get(repair.fromStepId());
            Happened so = happened.get(from.id());
            return repair.missed().stream().anyMatch(missed -> switch (missed) {
                case REST_TOO_LONG -> isUnattended(from) && rested(from, so, now) > from.mostMinutes();
                case REST_TOO_SHORT -> isUnattended(from) && !so.open() && rested(from, so, now) < from.leastMinutes();
                case WAIT_TOO_LONG -> !so.open() && problem.waits().stream().anyMatch(wait -> repair.isOf(wait) && isOver(wait, so, now));
            });
        }).toList();
    }

    /** Repairs of a wait that has begun, whether it is missed by now or would be missed later. */
    static List<Repair> open(Problem problem, Map<String, Happened> happened) {
        Set<String> ids = new LinkedHashSet<>();
        problem.steps().forEach(step -> ids.add(step.id()));
        return problem.repairs().stream().filter(repair -> ids.contains(repair.toStepId()) && !ids.contains(repair.id())
                && happened.containsKey(repair.fromStepId()) && !happened.containsKey(repair.toStepId())).toList();
    }

    private static boolean isOver(Wait wait, Happened from, int now) {
        return wait.hasMost() && (long) from.end() + wait.mostMinutes() < now;
    }

    private static boolean isUnattended(Step step) {
        return step.handsOn().isEmpty();
    }

    private static int rested(Step step, Happened so, int now) {
        return so.open() ? now - so.start() - step.putInMinutes() : so.end() - so.start() - step.putInMinutes() - step.takeOutMinutes();
    }
}
