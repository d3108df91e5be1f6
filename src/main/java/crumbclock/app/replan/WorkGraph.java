package crumbclock.app.replan;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Which step waits for which. */
final class WorkGraph {

    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, List<Wait>> before = new LinkedHashMap<>();
    private final Map<String, List<Wait>> after = new LinkedHashMap<>();

    WorkGraph(Problem problem) {
        problem.steps().forEach(step -> steps.put(step.id(), step));
        for (Wait wait : problem.waits()) {
            after.computeIfAbsent(wait.fromStepId(), key -> new ArrayList<>()).add(wait);
            before.computeIfAbsent(wait.toStepId(), key -> new ArrayList<>()).add(wait);
        }
    }

    Step step(String id) {
        return steps.get(id);
    }

    boolean holds(String id) {
        return steps.containsKey(id);
    }

    Set<String> ids() {
        return steps.keySet();
    }

    List<Wait> before(String id) {
        return before.getOrDefault(id, List.of());
    }

    List<Wait> after(String id) {
        return after.getOrDefault(id, List.of());
    }

    /** All that a step waits for, directly or not, as far as {@code wanted}; without the step itself. */
    Set<String> upstream(String id, Predicate<Step> wanted) {
        return reach(id, true, wanted);
    }

    /** All that waits for a step, directly or not, as far as {@code wanted}; without the step itself. */
    Set<String> downstream(String id, Predicate<Step> wanted) {
        return reach(id, false, wanted);
    }

    private Set<String> reach(String id, boolean back, Predicate<Step> wanted) {
        var found = new LinkedHashSet<String>();
        Deque<String> open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            String at = open.remove();
            for (Wait wait : back ? before(at) : after(at)) {
                String next = back ? wait.fromStepId() : wait.toStepId();
                if (!next.equals(id) && wanted.test(steps.get(next)) && found.add(next)) {
                    open.add(next);
                }
            }
        }
        return found;
    }
}
