package crumbclock.outside;

import java.util.Arrays;
import java.util.List;

/**
 * A project as the literature has it: activities with fixed durations, resources with capacities, and lags from start
 * to start. The last activity is the end of the project.
 *
 * @param durations  of each activity, at least 0
 * @param demands    by activity and resource
 * @param capacities by resource
 */
public record Network(String name, int[] durations, int[][] demands, int[] capacities, List<Lag> lags) {

    /** {@code start(to) ≥ start(from) + minutes}; a negative one is a maximum lag from {@code to} to {@code from}. */
    public record Lag(int from, int to, int minutes) {
    }

    /** The same project with a unit of time that is so many minutes long. */
    public Network inMinutes(int minutesPerUnit) {
        return new Network(name, Arrays.stream(durations).map(duration -> duration * minutesPerUnit).toArray(), demands, capacities,
                lags.stream().map(lag -> new Lag(lag.from, lag.to, lag.minutes * minutesPerUnit)).toList());
    }

    public int size() {
        return durations.length;
    }

    public int last() {
        return durations.length - 1;
    }

    /**
     * Longest paths between all pairs over all lags: {@code start(b) − start(a)} is at least {@code [a][b]};
     * {@link Integer#MIN_VALUE} where nothing ties them.
     */
    public int[][] longestPaths() {
        int[][] path = new int[size()][size()];
        for (int from = 0; from < size(); from++) {
            Arrays.fill(path[from], Integer.MIN_VALUE);
            path[from][from] = 0;
        }
        lags.forEach(lag -> path[lag.from][lag.to] = Math.max(path[lag.from][lag.to], lag.minutes));
        for (int via = 0; via < size(); via++) {
            for (int from = 0; from < size(); from++) {
                for (int to = 0; to < size(); to++) {
                    if (path[from][via] != Integer.MIN_VALUE && path[via][to] != Integer.MIN_VALUE) {
                        path[from][to] = Math.max(path[from][to], path[from][via] + path[via][to]);
                    }
                }
            }
        }
        return path;
    }
}
