package crumbclock.bench.reference;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import crumbclock.outside.Network;
import java.util.Arrays;

/** A published project or job shop for the exact solver, nothing left out: the usual model. */
final class NetworkModel {

    private NetworkModel() {
    }

    static CpModel of(Network network) {
        CpModel model = Exact.newModel();
        int horizon = Arrays.stream(network.durations()).sum()
                + network.lags().stream().mapToInt(lag -> Math.max(0, lag.minutes())).sum();
        IntVar[] start = new IntVar[network.size()];
        IntervalVar[] activity = new IntervalVar[network.size()];
        for (int index = 0; index < start.length; index++) {
            start[index] = model.newIntVar(0, horizon, "start " + index);
            activity[index] = model.newFixedSizeIntervalVar(start[index], network.durations()[index], "activity " + index);
        }
        network.lags().forEach(lag -> model.addGreaterOrEqual(start[lag.to()],
                LinearExpr.affine(start[lag.from()], 1, lag.minutes())));
        for (int resource = 0; resource < network.capacities().length; resource++) {
            CumulativeConstraint use = model.addCumulative(network.capacities()[resource]);
            for (int index = 0; index < start.length; index++) {
                if (network.demands()[index][resource] > 0) {
                    use.addDemand(activity[index], network.demands()[index][resource]);
                }
            }
        }
        model.minimize(start[network.last()]);
        return model;
    }
}
