package crumbclock.methods;

import crumbclock.domain.change.WorkChange.StepTime;
import crumbclock.domain.change.WorkChange.StepWindow;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;

import java.util.Set;
import java.util.stream.Collectors;

/** Makes expanded steps longer or shorter, as on a damp or a hot day. */
public final class StepTimes {

    private StepTimes() {
    }

    /** The same work with other minutes of the chosen steps. */
    public static Expanded timed(Expanded work, StepTime change) {
        var steps = work.steps().stream().map(step -> change.steps().holds(step) ? timed(step, change) : step).toList();
        return new Expanded(work.orders(), work.batches(), steps, work.waits(), work.coldLimits(), work.lifeLimits(),
                work.freshnessWishes(), work.repairs());
    }

    /** The same work with other limits after the chosen steps. */
    public static Expanded limited(Expanded work, StepWindow change) {
        Set<String> chosen = work.steps().stream().filter(change.steps()::holds).map(Step::id).collect(Collectors.toSet());
        var waits = work.waits().stream().map(wait -> chosen.contains(wait.fromStepId()) && wait.hasMost()
                ? new Wait(wait.fromStepId(), wait.toStepId(), wait.leastMinutes(),
                        Math.max(wait.leastMinutes(), down(wait.mostMinutes(), change.percent()))) : wait).toList();
        var cold = work.coldLimits().stream().map(limit -> limit.heldStepIds().stream().anyMatch(chosen::contains)
                ? new ColdLimit(limit.id(), limit.name(), limit.ownerId(), limit.fromStepId(), limit.toStepId(), limit.heldStepIds(),
                        down(limit.mostMinutesOut(), change.percent())) : limit).toList();
        return new Expanded(work.orders(), work.batches(), work.steps(), waits, cold, work.lifeLimits(), work.freshnessWishes(), work.repairs());
    }

    private static Step timed(Step step, StepTime change) {
        var work = step.handsOn().map(now -> new HandsOn(minutes(now.minutes(), change), now.people(), now.skill(), now.workKind(),
                now.mayPutDown(), now.away(), now.finish()));
        boolean rests = step.handsOn().isEmpty();
        int least = rests ? minutes(step.leastMinutes(), change) : step.leastMinutes();
        int most = !rests || step.mostMinutes() == Wait.NO_MOST ? step.mostMinutes()
                : step.mostMinutes() + least - step.leastMinutes();
        var oven = step.oven().map(bake -> baking(bake, step.leastMinutes(), least));
        return new Step(step.id(), step.name(), step.ownerId(), step.part(), step.kind(), work, least, most, step.putIn(),
                step.takeOut(), step.presence(), step.equipment(), oven, step.place(), step.contains(), step.freeFrom(),
                step.earliest());
    }

    /** The door stays shut for the same share of the bake, and cooling in the oven never takes all of it. */
    private static OvenUse baking(OvenUse bake, int leastBefore, int least) {
        int cooling = Math.min(bake.coolInOvenMinutes(), least);
        int before = Math.max(1, leastBefore - bake.coolInOvenMinutes());
        int doorShut = Math.min(least - cooling, (bake.doorShutMinutes() * (least - cooling) + before - 1) / before);
        return new OvenUse(bake.temperatureC(), bake.pans(), doorShut, cooling);
    }

    /** What took time still takes a minute at least, and never more than the longest problem has. */
    private static int minutes(int now, StepTime change) {
        long changed = ((long) now * change.percent() + 99) / 100 + change.minutes();
        return (int) Math.min(Scope.MOST_MINUTES, Math.max(Math.min(now, 1), changed));
    }

    private static int down(int minutes, int percent) {
        return (int) Math.min(Scope.MOST_MINUTES, (long) minutes * percent / 100);
    }
}
