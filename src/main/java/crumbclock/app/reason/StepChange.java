package crumbclock.app.reason;

import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Wait;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Copies of a step that ask for less. */
final class StepChange {

    private StepChange() {
    }

    static Step withEquipment(Step step, List<EquipmentNeed> equipment) {
        return copy(step, step.handsOn(), step.leastMinutes(), step.mostMinutes(), step.presence(), equipment, step.oven(),
                step.freeFrom(), step.earliest());
    }

    /** An unattended step may end at once; hands-on work takes as long as ever. */
    static Step withoutRest(Step step) {
        return copy(step, step.handsOn(), 0, step.mostMinutes(), step.presence(), step.equipment(),
                step.oven().map(oven -> new OvenUse(oven.temperatureC(), oven.pans(), 0, 0)), step.freeFrom(), step.earliest());
    }

    /** An unattended step may last as long as it likes; a bake is done when it is done. */
    static Step withoutMost(Step step) {
        return step.kind() == StepKind.HANDS_ON || step.oven().isPresent() ? step
                : copy(step, step.handsOn(), step.leastMinutes(), Wait.NO_MOST, step.presence(), step.equipment(),
                        step.oven(), step.freeFrom(), step.earliest());
    }

    static Step withoutEarliest(Step step) {
        return copy(step, step.handsOn(), step.leastMinutes(), step.mostMinutes(), step.presence(), step.equipment(),
                step.oven(), step.freeFrom(), 0);
    }

    static Step withoutFreeFrom(Step step) {
        return copy(step, step.handsOn(), step.leastMinutes(), step.mostMinutes(), step.presence(), step.equipment(),
                step.oven(), Set.of(), step.earliest());
    }

    /** The moment stays, the hands and the car are not needed. */
    static Step withoutHandsOrCar(Step step) {
        return copy(step, step.handsOn().map(work -> new HandsOn(0, 1, "", "", false, false, false)), step.leastMinutes(),
                step.mostMinutes(), false, List.of(), step.oven(), step.freeFrom(), step.earliest());
    }

    private static Step copy(Step step, Optional<HandsOn> handsOn, int least, int most, boolean presence,
            List<EquipmentNeed> equipment, Optional<OvenUse> oven, Set<String> freeFrom, int earliest) {
        return new Step(step.id(), step.name(), step.ownerId(), step.part(), step.kind(), handsOn, least, most,
                step.putIn(), step.takeOut(), presence, equipment, oven, step.place(), step.contains(), freeFrom, earliest);
    }
}
