package crumbclock.domain.plan;

import crumbclock.units.Span;
import java.util.List;

/**
 * A step in the timetable.
 *
 * @param work      for hands-on steps of at least one minute: as many people as needed, all with the same spans
 * @param units     pieces of equipment that this step takes
 * @param surfaceId rack or bench that it stands on; empty for none
 * @param cavityId  oven cavity that it bakes in; empty for none
 */
public record PlacedStep(String stepId, int start, int end, List<PersonWork> work, List<UnitUse> units,
        String surfaceId, String cavityId) {

    public PlacedStep {
        work = List.copyOf(work);
        units = List.copyOf(units);
    }

    public Span span() {
        return new Span(start, end);
    }
}
