package crumbclock.engine.decode;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.List;

/**
 * A plain, slow scheduler for tiny problems: one person, work that is not put down, rests of a given length with or
 * without touches, waits, and pools of one piece, in fewer than 64 minutes. It tries every minute for every step.
 */
final class SlowTwin {

    private final Problem problem;
    private final List<Step> steps;
    private final int horizon;
    private final int[] start;
    private int limit;

    SlowTwin(Problem problem) {
        this.problem = problem;
        steps = problem.steps();
        horizon = problem.clock().horizonMinutes();
        start = new int[steps.size()];
    }

    /** The least minute by which all steps can be over; −1 when they cannot. */
    int leastEnd() {
        for (limit = 1; limit <= horizon; limit++) {
            if (canPlace(0, onShift())) {
                return limit;
            }
        }
        return -1;
    }

    /** One bit a minute in which the person is free. */
    private long onShift() {
        long free = 0;
        for (Span shift : problem.kitchen().people().get(0).shifts()) {
            free |= bits(shift.start(), shift.end());
        }
        for (Span pause : problem.kitchen().people().get(0).breaks()) {
            free &= ~bits(pause.start(), pause.end());
        }
        return free;
    }

    private static long bits(int from, int until) {
        long bits = 0;
        for (int minute = Math.max(0, from); minute < until; minute++) {
            bits |= 1L << minute;
        }
        return bits;
    }

    private boolean canPlace(int step, long free) {
        if (step == steps.size()) {
            return poolsSuffice();
        }
        for (int at = 0; at + length(step) <= limit; at++) {
            long hands = hands(step, at);
            if ((hands & ~free) == 0) {
                start[step] = at;
                if (waitsHold(step) && canPlace(step + 1, free & ~hands)) {
                    return true;
                }
            }
        }
        return false;
    }

    private int length(int step) {
        Step of = steps.get(step);
        return of.handsOn().map(work -> work.minutes()).orElse(of.putInMinutes() + of.leastMinutes() + of.takeOutMinutes());
    }

    private long hands(int step, int at) {
        Step of = steps.get(step);
        int end = at + length(step);
        return of.handsOn().isPresent() ? bits(at, end)
                : bits(at, at + of.putInMinutes()) | bits(end - of.takeOutMinutes(), end);
    }

    /** Between this step and those placed before it. */
    private boolean waitsHold(int last) {
        for (Wait wait : problem.waits()) {
            int from = index(wait.fromStepId());
            int to = index(wait.toStepId());
            if (Math.max(from, to) == last) {
                long gap = start[to] - start[from] - length(from);
                if (gap < wait.leastMinutes() || gap > wait.mostMinutes()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean poolsSuffice() {
        for (int one = 0; one < steps.size(); one++) {
            for (int other = 0; other < one; other++) {
                for (EquipmentNeed ours : steps.get(one).equipment()) {
                    for (EquipmentNeed theirs : steps.get(other).equipment()) {
                        if (ours.poolId().equals(theirs.poolId()) && meet(one, ours, other, theirs)) {
                            return false;
                        }
                    }
                }
            }
        }
        return true;
    }

    private boolean meet(int one, EquipmentNeed ours, int other, EquipmentNeed theirs) {
        int clean = problem.kitchen().pools().get(0).cleanMinutes();
        return start[one] < end(theirs) + clean && start[other] < end(ours) + clean;
    }

    private int end(EquipmentNeed need) {
        int last = index(need.untilStepId());
        return start[last] + length(last);
    }

    private int index(String stepId) {
        for (int step = 0; step < steps.size(); step++) {
            if (steps.get(step).id().equals(stepId)) {
                return step;
            }
        }
        throw new IllegalArgumentException(stepId);
    }
}
