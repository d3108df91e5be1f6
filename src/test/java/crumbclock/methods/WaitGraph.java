package crumbclock.methods;

import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Longest path through the waits, reckoned apart from the code under test: by repeated relaxation. */
final class WaitGraph {

    private final Map<String, Step> steps = new HashMap<>();
    private final List<Wait> waits;

    WaitGraph(List<Step> steps, List<Wait> waits) {
        steps.forEach(step -> this.steps.put(step.id(), step));
        this.waits = waits;
    }

    /** Hands-on minutes at pace 1 and least rests and waits up to the end of the step; touches left out. */
    int leastMinutesTo(String stepId) {
        var ends = new HashMap<String, Integer>();
        steps.keySet().forEach(id -> ends.put(id, minutes(id)));
        for (int round = 0; round <= steps.size(); round++) {
            boolean changed = false;
            for (Wait wait : waits) {
                int end = ends.get(wait.fromStepId()) + wait.leastMinutes() + minutes(wait.toStepId());
                if (end > ends.get(wait.toStepId())) {
                    ends.put(wait.toStepId(), end);
                    changed = true;
                }
            }
            if (!changed) {
                return ends.get(stepId);
            }
        }
        throw new AssertionError("the waits run in a circle");
    }

    private int minutes(String id) {
        var step = steps.get(id);
        return step.handsOn().map(HandsOn::minutes).orElse(step.leastMinutes());
    }

    /** Steps from which the waits lead to this one, itself included. */
    Set<String> before(String stepId) {
        var before = new HashSet<String>(Set.of(stepId));
        while (true) {
            int size = before.size();
            waits.stream().filter(wait -> before.contains(wait.toStepId())).map(Wait::fromStepId)
                    .toList().forEach(before::add);
            if (before.size() == size) {
                return before;
            }
        }
    }
}
