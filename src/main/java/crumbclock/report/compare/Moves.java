package crumbclock.report.compare;

import crumbclock.domain.compare.Move;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.PlacedStep;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Steps that two plans have at unlike times. */
final class Moves {

    private Moves() {
    }

    /** In the order of the first plan. */
    static List<Move> between(Plan first, Plan second) {
        var starts = starts(second);
        return first.timetable().steps().stream()
                .filter(step -> starts.containsKey(step.stepId()) && starts.get(step.stepId()) != step.start())
                .map(step -> new Move(step.stepId(), step.start(), starts.get(step.stepId()))).toList();
    }

    /** How many steps both have. */
    static int common(Plan first, Plan second) {
        var starts = starts(second);
        return (int) first.timetable().steps().stream().filter(step -> starts.containsKey(step.stepId())).count();
    }

    private static Map<String, Integer> starts(Plan plan) {
        Map<String, Integer> starts = new LinkedHashMap<>();
        for (PlacedStep step : plan.timetable().steps()) {
            starts.put(step.stepId(), step.start());
        }
        return starts;
    }
}
