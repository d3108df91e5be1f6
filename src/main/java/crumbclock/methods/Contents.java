package crumbclock.methods;

import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What is in each step's hands: what came in with it and with all steps before it. */
final class Contents {

    private final Map<String, Set<String>> byStep = new LinkedHashMap<>();
    private final List<String> inCircle;

    private Contents(List<String> inCircle) {
        this.inCircle = inCircle;
    }

    /**
     * Follows the waits from step to step.
     *
     * @param waits between these steps only
     */
    static Contents of(List<Step> steps, List<Wait> waits) {
        var open = new LinkedHashMap<String, Integer>();
        var following = new LinkedHashMap<String, List<String>>();
        steps.forEach(step -> {
            open.put(step.id(), 0);
            following.put(step.id(), new ArrayList<>());
        });
        waits.forEach(wait -> {
            open.merge(wait.toStepId(), 1, Integer::sum);
            following.get(wait.fromStepId()).add(wait.toStepId());
        });
        var inCircle = new ArrayList<String>();
        var contents = new Contents(inCircle);
        steps.forEach(step -> contents.byStep.put(step.id(), new TreeSet<>(step.contains())));
        var ready = new ArrayDeque<String>();
        open.forEach((id, before) -> {
            if (before == 0) {
                ready.add(id);
            }
        });
        while (!ready.isEmpty()) {
            String id = ready.poll();
            open.remove(id);
            for (String next : following.get(id)) {
                contents.byStep.get(next).addAll(contents.byStep.get(id));
                if (open.merge(next, -1, Integer::sum) == 0) {
                    ready.add(next);
                }
            }
        }
        inCircle.addAll(open.keySet());
        return contents;
    }

    /** Steps that wait for each other, directly or not; empty when all is well. */
    List<String> inCircle() {
        return List.copyOf(inCircle);
    }

    Set<String> in(String stepId) {
        return byStep.get(stepId);
    }

    Step fill(Step step) {
        return step.withContains(in(step.id()));
    }
}
