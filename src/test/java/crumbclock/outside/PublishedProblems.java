package crumbclock.outside;

import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;

import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.StepBuilder;
import crumbclock.outside.Network.Lag;
import java.util.Set;
import java.util.TreeSet;

/**
 * Published scheduling problems told in Crumbclock's words: an activity is a step that rests for exactly its duration,
 * a resource is a pool with as many pieces as its capacity, the project is one cake, set aside. Only the end of the
 * last step costs (wish W07), a point a minute, so a plan's cost is the makespan. No people are needed.
 */
public final class PublishedProblems {

    static final String LAST = "project/end";

    private static final Weights MAKESPAN = new Weights(0, 0, Weights.DEFAULT.notPossible(), 0, 0, 0, 0, 0, 0, 0, 0, 0,
            0, 0, 1, 0, 1440, 0, 0);

    private PublishedProblems() {
    }

    public static Problem of(Network network) {
        int horizon = horizon(network);
        ProblemBuilder problem = aProblem().horizon(horizon).weights(MAKESPAN);
        for (int resource = 0; resource < network.capacities().length; resource++) {
            problem.pool(aPool("resource " + resource, network.capacities()[resource]));
        }
        for (int activity = 0; activity < network.size(); activity++) {
            problem.step(step(network, activity));
        }
        waits(network, problem);
        return problem.order(anOrder("order").cake("project", LAST).setAsideBy(horizon)).build();
    }

    /** Long enough to do one activity after the other, with every lag between. */
    private static int horizon(Network network) {
        int sum = 0;
        for (int activity = 0; activity < network.size(); activity++) {
            int from = activity;
            sum += Math.max(network.durations()[activity], network.lags().stream().filter(lag -> lag.from() == from)
                    .mapToInt(Lag::minutes).max().orElse(0));
        }
        return sum;
    }

    private static String id(Network network, int activity) {
        return activity == network.last() ? LAST : "project/" + activity;
    }

    private static StepBuilder step(Network network, int activity) {
        int duration = network.durations()[activity];
        StepBuilder step = resting(id(network, activity), duration, duration);
        for (int resource = 0; resource < network.capacities().length; resource++) {
            if (network.demands()[activity][resource] > 0) {
                step.takes("resource " + resource, network.demands()[activity][resource]);
            }
        }
        return step;
    }

    /**
     * One wait for each pair with a lag. Waits run from an end to a start and never in a circle; lags run from start
     * to start and, with maximum lags, both ways. So each lag becomes a least wait in its own direction, negative for
     * a maximum lag, unless that would close a circle: then it becomes the most of the wait the other way.
     */
    private static void waits(Network network, ProblemBuilder problem) {
        int[][] path = network.longestPaths();
        boolean[][] before = before(network, path);
        Set<Integer> done = new TreeSet<>();
        for (Lag lag : network.lags()) {
            int first = before[lag.from()][lag.to()] ? lag.from() : lag.to();
            int second = lag.from() + lag.to() - first;
            if (done.add(first * network.size() + second)) {
                int least = path[first][second];
                int back = path[second][first];
                int duration = network.durations()[first];
                problem.wait(id(network, first), id(network, second),
                        least == Integer.MIN_VALUE ? -horizon(network) : least - duration,
                        back == Integer.MIN_VALUE ? Wait.NO_MOST : -back - duration);
            }
        }
    }

    /** Which of two comes first in the waits: the one that can never start later, else as the lags have it. */
    private static boolean[][] before(Network network, int[][] path) {
        int size = network.size();
        boolean[][] before = new boolean[size][size];
        for (int from = 0; from < size; from++) {
            for (int to = 0; to < size; to++) {
                before[from][to] = from != to && path[from][to] >= 0 && (path[to][from] < 0 || from < to);
            }
        }
        for (Lag lag : network.lags()) {
            if (!before[lag.to()][lag.from()]) {
                for (int from = 0; from < size; from++) {
                    for (int to = 0; to < size; to++) {
                        before[from][to] |= (from == lag.from() || before[from][lag.from()])
                                && (to == lag.to() || before[lag.to()][to]);
                    }
                }
            }
        }
        return before;
    }
}
