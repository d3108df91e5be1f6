package crumbclock.domain.work;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Steps that make good a wait, or a rest, that was missed on the day. No plan has them until that has happened.
 *
 * @param fromStepId the step that the wait counts from, or whose rest was missed
 * @param toStepId   the step that comes next, which waits for it and now waits for the repair, too
 * @param steps      in order, at least one
 * @param missed     at least one; each of them calls for it
 * @param waits      from the first of both, along the steps, to the next one
 */
public record Repair(String fromStepId, String toStepId, Set<Missed> missed, List<Step> steps, List<Wait> waits) {

    /** What was missed. */
    public enum Missed {
        /** The most of the rest before the wait: it rested too long. */
        REST_TOO_LONG,
        /** The least of that rest. */
        REST_TOO_SHORT,
        /** The most of the wait itself. */
        WAIT_TOO_LONG
    }

    public Repair {
        missed = Collections.unmodifiableSet(EnumSet.copyOf(missed));
        steps = List.copyOf(steps);
        waits = List.copyOf(waits);
    }

    /** The id of its first step. */
    public String id() {
        return steps.get(0).id();
    }

    /** Whether this is the wait that it makes good. */
    public boolean isOf(Wait wait) {
        return wait.fromStepId().equals(fromStepId) && wait.toStepId().equals(toStepId);
    }
}
