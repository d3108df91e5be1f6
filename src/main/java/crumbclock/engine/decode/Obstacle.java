package crumbclock.engine.decode;

import crumbclock.domain.plan.Rule;
import crumbclock.engine.model.Task;

/** What stood in the way last; filled by the placers, read by whoever called them. */
final class Obstacle {

    /** To be raised, or that found no place. */
    Task task;
    int minute;
    /** The rule that stood in the way last when a task found no place. */
    Rule rule = Rule.R14;

    Outcome raise(Task raised, int from) {
        task = raised;
        minute = from;
        return Outcome.RAISE;
    }

    Outcome never(Task stuck) {
        task = stuck;
        return Outcome.NEVER;
    }
}
