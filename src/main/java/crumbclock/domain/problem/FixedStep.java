package crumbclock.domain.problem;

import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import java.util.List;

/**
 * Something that has happened, is running or is pinned (rule R15): the plan must hold exactly this.
 */
public record FixedStep(PlacedStep step, List<PlacedTouch> touches, List<PanPlace> pans, List<Placement> placements) {

    public FixedStep {
        touches = List.copyOf(touches);
        pans = List.copyOf(pans);
        placements = List.copyOf(placements);
    }
}
