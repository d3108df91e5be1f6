package crumbclock.formats.plan;

import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads what a problem file says has happened, is running or is pinned (rule R15). */
public final class FixedSteps {

    private FixedSteps() {
    }

    /**
     * @param spot    the list in the file
     * @param problem that the steps belong to
     */
    public static List<FixedStep> read(Spot spot, List<FixedEntry> entries, Problem problem, IssueLog log) {
        var references = new PlanReferences(problem, log);
        var converter = new StepConverter(references);
        Set<String> seen = new HashSet<>();
        return Each.of(spot, entries, (at, entry) -> {
            if (!seen.add(entry.step())) {
                at.child("step").fault(log, "each step fixed once", "It stands above already.");
            }
            return new FixedStep(converter.step(at, entry.asStep()),
                    Each.of(at.child("touches"), entry.touches(), (place, touch) -> converter.touch(place, entry.step(), touch)),
                    Each.of(at.child("pans"), entry.pans(), (place, pan) -> converter.pan(place, entry.step(), pan)),
                    Each.of(at.child("placements"), entry.placements(), (place, item) -> converter.placement(place, entry.step(), item)));
        });
    }
}
