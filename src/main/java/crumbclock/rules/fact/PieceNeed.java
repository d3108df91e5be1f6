package crumbclock.rules.fact;

import crumbclock.domain.work.EquipmentNeed;
import crumbclock.units.Span;

/** One need for equipment of a placed step. */
public record PieceNeed(String stepId, EquipmentNeed need, Span when) {

    public String poolId() {
        return need.poolId();
    }
}
