package crumbclock.app.replan;

import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Copies of a step that differ in a little. */
final class StepCopies {

    private StepCopies() {
    }

    static Step notBefore(Step step, int minute) {
        return step.withEarliest(Math.max(step.earliest(), minute));
    }

    /** A moment that needs nobody and nothing. */
    static Step skipped(Step step) {
        return moment(step, step.id(), List.of(), step.earliest());
    }

    /** A moment that needs nobody, and takes pieces of equipment. */
    static Step moment(Step step, String id, List<EquipmentNeed> equipment, int at) {
        return new Step(id, step.name(), step.ownerId(), step.part(), StepKind.HANDS_ON,
                Optional.of(HandsOn.NOTHING), 0, 0, Optional.empty(), Optional.empty(), false,
                equipment, Optional.empty(), Optional.empty(), step.contains(), Set.of(), at);
    }

    /** The part of a stay that is over: it ends when it is taken to end, whatever its least and most. */
    static Step cutShort(Step step, List<EquipmentNeed> equipment) {
        return new Step(step.id(), step.name(), step.ownerId(), step.part(), step.kind(), step.handsOn(), 0, Wait.NO_MOST,
                step.putIn(), Optional.empty(), step.presence(), equipment, step.oven(), step.place(), step.contains(),
                step.freeFrom(), step.earliest());
    }

    /** The part of a stay that is still to come. */
    static Step stillToStay(Step step, String id, int least, int most, Optional<PlaceNeed> place, int from) {
        return new Step(id, step.name(), step.ownerId(), step.part(), step.kind(), Optional.empty(), least, most,
                Optional.<Touch>empty(), step.takeOut(), step.presence(), List.of(), Optional.empty(), place, step.contains(),
                step.freeFrom(), from);
    }
}
