package crumbclock.report.view;

import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Wait;
import java.util.Optional;

/**
 * From when to when something may be taken out or begun, all that lies before it being as planned.
 *
 * @param from   first minute
 * @param until  last minute, still allowed; {@link Wait#NO_MOST} when nothing limits it
 */
public record TimeWindow(int from, int until) {

    public boolean hasEnd() {
        return until != Wait.NO_MOST;
    }

    /**
     * When an unattended step may be taken out, given when it went in: its least and most rest after the putting-in
     * touch. The window opens later where a following step, at its planned time, would otherwise come after its most
     * wait; the moment meant is the start of the taking-out touch, or the step's end without one.
     */
    public static Optional<TimeWindow> takeOut(PlanView view, String stepId) {
        var step = view.findStep(stepId);
        var placed = view.findPlaced(stepId);
        if (step.isEmpty() || placed.isEmpty() || step.get().kind() != StepKind.UNATTENDED) {
            return Optional.empty();
        }
        var rest = restEnd(step.get(), placed.get());
        int from = rest.from();
        for (Wait wait : view.waitsFrom(stepId)) {
            var next = view.findPlaced(wait.toStepId());
            if (wait.hasMost() && next.isPresent()) {
                from = Math.max(from, next.get().start() - wait.mostMinutes() - step.get().takeOutMinutes());
            }
        }
        return Optional.of(new TimeWindow(from, Math.max(from, rest.until())));
    }

    /**
     * When a hands-on step may begin, given what went before: after every least wait, before every most wait. A thing
     * that stands without a taking-out touch before it counts with its own least and most rest, as this step is what
     * ends it. Empty when nothing before it is in the plan.
     */
    public static Optional<TimeWindow> begin(PlanView view, String stepId) {
        int from = Integer.MIN_VALUE;
        int until = Wait.NO_MOST;
        for (Wait wait : view.waitsTo(stepId)) {
            var before = view.findStep(wait.fromStepId());
            var placed = view.findPlaced(wait.fromStepId());
            if (before.isEmpty() || placed.isEmpty()) {
                continue;
            }
            boolean endsHere = before.get().kind() == StepKind.UNATTENDED && before.get().takeOut().isEmpty();
            var end = endsHere ? restEnd(before.get(), placed.get())
                    : new TimeWindow(placed.get().end(), placed.get().end());
            from = Math.max(from, end.from() + wait.leastMinutes());
            until = Math.min(until, plus(end.until(), wait.mostMinutes()));
        }
        return from == Integer.MIN_VALUE ? Optional.empty() : Optional.of(new TimeWindow(from, until));
    }

    private static TimeWindow restEnd(Step step, PlacedStep placed) {
        int restFrom = placed.start() + step.putInMinutes();
        return new TimeWindow(restFrom + step.leastMinutes(), plus(restFrom, step.mostMinutes()));
    }

    private static int plus(int minute, int more) {
        return minute == Wait.NO_MOST || more == Wait.NO_MOST ? Wait.NO_MOST : minute + more;
    }

    /** {@code between 10:45 and 10:55}, {@code at 10:45}, {@code from 10:45 on}. */
    public String text(ClockText clock, int seenFrom) {
        if (!hasEnd()) {
            return "from " + clock.timeSeenFrom(seenFrom, from) + " on";
        }
        if (from == until) {
            return "at " + clock.timeSeenFrom(seenFrom, from);
        }
        return "between " + clock.timeSeenFrom(seenFrom, from) + " and " + clock.timeSeenFrom(seenFrom, until);
    }
}
