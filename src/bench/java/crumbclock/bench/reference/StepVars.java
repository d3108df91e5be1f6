package crumbclock.bench.reference;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import crumbclock.domain.work.Step;

/** A step in the model: its two times, and the minutes between them. */
record StepVars(Step step, IntVar start, IntVar length, IntVar end) {

    static StepVars of(CpModel model, Step step, int horizon) {
        IntVar start = model.newIntVar(Math.max(0, step.earliest()), horizon, "");
        IntVar end = model.newIntVar(0, horizon, "");
        return new StepVars(step, start, between(model, start, end, horizon), end);
    }

    /** The minutes from one time to a later one. */
    static IntVar between(CpModel model, LinearArgument from, LinearArgument until, int horizon) {
        IntVar minutes = model.newIntVar(0, horizon, "");
        model.addEquality(LinearExpr.newBuilder().addTerm(from, 1).addTerm(minutes, 1).build(), until);
        return minutes;
    }
}
