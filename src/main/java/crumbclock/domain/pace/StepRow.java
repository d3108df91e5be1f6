package crumbclock.domain.pace;

import java.util.List;

/**
 * One kind of step, whoever did it.
 *
 * @param name         what people call it
 * @param handsOn      false for a step that goes on by itself, such as a bake
 * @param leastPlanned fewest minutes that a plan had for one of them
 * @param mostPlanned  most minutes
 * @param minutes      that they took
 * @param timesPlanned how often the planned minutes go into the real ones
 */
public record StepRow(String name, boolean handsOn, int leastPlanned, int mostPlanned, Spread minutes, Spread timesPlanned) {

    /** @param steps of one kind, at least one */
    static StepRow of(List<SeenStep> steps) {
        return new StepRow(steps.get(0).stepName(), steps.get(0).plainMinutes() > 0,
                steps.stream().mapToInt(SeenStep::plannedMinutes).min().orElseThrow(),
                steps.stream().mapToInt(SeenStep::plannedMinutes).max().orElseThrow(),
                Spread.of(steps.stream().map(step -> (double) step.realMinutes()).toList()),
                Spread.of(steps.stream().map(SeenStep::timesPlanned).toList()));
    }

    /** Whether enough were seen to go by. */
    public boolean isEnough() {
        return minutes.seen() >= PaceRow.LEAST_SEEN;
    }
}
