package crumbclock.domain.problem;

import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import java.util.ArrayList;
import java.util.List;

/**
 * The plan that people already have and that a new one should change little (wish W08): the steps still to come.
 *
 * @param now   minute from which on it holds; a move is the dearer, the sooner after this it matters
 * @param steps each step at most once
 */
public record KeptPlan(int now, List<KeptStep> steps) {

    /** Nobody has a plan yet. */
    public static final KeptPlan NONE = new KeptPlan(0, List.of());

    /** A step moved further is as good as a new one: more minutes cost no more. */
    public static final int MOST_MOVED = 240;
    /** Up to so many minutes from now people are about to begin, or have begun to fetch things: a move counts fourfold. */
    public static final int SOON_MINUTES = 120;
    public static final int SOON_FACTOR = 4;
    /** Up to a day from now they have arranged themselves: a move counts double. */
    public static final int DAY_MINUTES = 1_440;
    public static final int DAY_FACTOR = 2;

    public KeptPlan {
        steps = List.copyOf(steps);
    }

    /** What people know of a timetable from a minute on: the steps that begin then or later and that somebody works on or touches. */
    public static KeptPlan of(Timetable timetable, int now) {
        List<KeptStep> steps = new ArrayList<>();
        for (PlacedStep step : timetable.steps()) {
            String putIn = toucher(timetable, step, TouchEnd.PUT_IN);
            String takeOut = toucher(timetable, step, TouchEnd.TAKE_OUT);
            if (step.start() >= now && !(step.work().isEmpty() && putIn.isEmpty() && takeOut.isEmpty())) {
                steps.add(new KeptStep(step.stepId(), step.start(),
                        step.work().stream().map(PersonWork::personId).toList(), putIn, takeOut));
            }
        }
        return new KeptPlan(now, steps);
    }

    private static String toucher(Timetable timetable, PlacedStep step, TouchEnd end) {
        return timetable.touches().stream().filter(touch -> touch.stepId().equals(step.stepId()) && touch.at() == end)
                .map(PlacedTouch::personId).findFirst().orElse("");
    }

    public boolean isNone() {
        return steps.isEmpty();
    }
}
