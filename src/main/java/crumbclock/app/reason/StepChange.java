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

    /** An unattended step may end at once; hands-on work takes as long as ever. */
    static Step withoutRest(Step step) {
        return copy(step, step.handsOn(), 0, step.presence(), step.equipment(),
                step.oven().map(oven -> new OvenUse(oven.temperatureC(), oven.pans(), 0, 0)));
    }

    /** An unattended step may last as long as it likes; a bake is done when it is done. */
    static Step withoutMost(Step step) {
        return step.kind() == StepKind.HANDS_ON || step.oven().isPresent() ? step
                : step.withRest(step.leastMinutes(), Wait.NO_MOST);
    }

    static Step withoutEarliest(Step step) {
        return step.withEarliest(0);
    }

    static Step withoutFreeFrom(Step step) {
        return step.withFreeFrom(Set.of());
    }

    /** The moment stays, the hands and the car are not needed. */
    static Step withoutHandsOrCar(Step step) {
        return copy(step, step.handsOn().map(work -> HandsOn.NOTHING), step.leastMinutes(), false, List.of(), step.oven());
    }

    private static Step copy(Step step, Optional<HandsOn> handsOn, int least, boolean presence, List<EquipmentNeed> equipment,
            Optional<OvenUse> oven) {
        return new Step(step.id(), step.name(), step.ownerId(), step.part(), step.kind(), handsOn, least, step.mostMinutes(),
                step.putIn(), step.takeOut(), presence, equipment, oven, step.place(), step.contains(), step.freeFrom(), step.earliest());
    }
}
