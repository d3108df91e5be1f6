package crumbclock.engine.model;

import crumbclock.domain.problem.FixedStep;
import crumbclock.units.Span;
import java.util.Map;

/**
 * Marks what is recorded (rule R15), and has what comes before it in abstract time end when its waits to it want that:
 * recorded tasks stand on the board from the start, so the placers see only those that come before theirs.
 */
final class FixedWindows {

    private final int horizon;
    private final boolean mirrored;

    FixedWindows(int horizon, boolean mirrored) {
        this.horizon = horizon;
        this.mirrored = mirrored;
    }

    void mark(Iterable<FixedStep> fixedSteps, Map<String, Task> taskById) {
        for (FixedStep fixed : fixedSteps) {
            Task task = taskById.get(fixed.step().stepId());
            if (task != null) {
                task.fixed = true;
                Span real = fixed.step().span();
                int start = mirrored ? horizon - real.end() : real.start();
                for (Link link : task.before) {
                    narrow(link, start);
                }
            }
        }
    }

    private static void narrow(Link link, int start) {
        Task before = link.from();
        before.latestEnd = Math.min(before.latestEnd, start - link.least());
        if (link.hasMost()) {
            before.earliestEnd = Math.max(before.earliestEnd, start - link.most());
        }
    }
}
