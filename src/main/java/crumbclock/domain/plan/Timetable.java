package crumbclock.domain.plan;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The finished work of the engine: who does what when, on what, where. All lists are sorted by time, then by id.
 */
public record Timetable(List<PlacedStep> steps, List<PlacedTouch> touches, List<OvenRun> ovenRuns,
        List<PanPlace> pans, List<Placement> placements, List<Cleaning> cleanings, List<Outcome> outcomes) {

    public Timetable {
        steps = List.copyOf(steps);
        touches = List.copyOf(touches);
        ovenRuns = List.copyOf(ovenRuns);
        pans = List.copyOf(pans);
        placements = List.copyOf(placements);
        cleanings = List.copyOf(cleanings);
        outcomes = List.copyOf(outcomes);
    }

    /** The same work, with each outcome told otherwise. */
    public Timetable withEachOutcome(UnaryOperator<Outcome> change) {
        return new Timetable(steps, touches, ovenRuns, pans, placements, cleanings, outcomes.stream().map(change).toList());
    }
}
