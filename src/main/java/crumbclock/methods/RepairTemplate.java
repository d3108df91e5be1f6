package crumbclock.methods;

import crumbclock.domain.work.Repair;
import java.util.List;

/**
 * What can be done when a wait was missed on the day.
 *
 * @param from      the step that the wait counts from, or whose rest was missed
 * @param to        the step after that wait
 * @param missed    each of what calls for it, at least one
 * @param steps     in order, made only then; each follows the one before it, the first one {@code from}
 * @param waitAfter from the last of them to {@code to}; any time by default
 */
public record RepairTemplate(String from, String to, List<Repair.Missed> missed, List<StepTemplate> steps, WaitTemplate waitAfter) {

    public RepairTemplate {
        from = Given.text(from);
        to = Given.text(to);
        missed = Given.list(missed);
        steps = Given.list(steps);
        waitAfter = Given.or(waitAfter, new WaitTemplate(0, null));
    }
}
