package crumbclock.formats.plan;

import crumbclock.formats.plan.PlanFile.PanEntry;
import crumbclock.formats.plan.PlanFile.PlacementEntry;
import crumbclock.formats.plan.PlanFile.StepEntry;
import crumbclock.formats.plan.PlanFile.TouchEntry;
import crumbclock.formats.plan.PlanFile.UnitEntry;
import crumbclock.formats.plan.PlanFile.WorkEntry;
import java.util.List;

/** A fixed step of a problem file: a step as in a plan file, with its touches, pans and placements inside it. */
public record FixedEntry(String step, int start, int end, List<WorkEntry> work, List<UnitEntry> units, String surface, String cavity,
        List<TouchEntry> touches, List<PanEntry> pans, List<PlacementEntry> placements) {

    public FixedEntry {
        touches = touches == null ? List.of() : touches;
        pans = pans == null ? List.of() : pans;
        placements = placements == null ? List.of() : placements;
    }

    StepEntry asStep() {
        return new StepEntry(step, start, end, work, units, surface, cavity);
    }
}
