package crumbclock.domain.plan;

import java.util.List;
import java.util.Optional;

/**
 * A timetable with what the audit said of it and what it cost.
 *
 * @param findings    broken rules; empty for a sound plan
 * @param cost        one line for lateness and each wish
 * @param mediumCost  sum of the medium lines
 * @param softCost    sum of the soft lines
 * @param search      how it came about
 * @param bound       what no sound plan that makes the same orders can be better than, where that was reckoned
 */
public record Plan(String problemTitle, Timetable timetable, List<Finding> findings, List<CostLine> cost,
        long mediumCost, long softCost, SearchNote search, Optional<LowerBound> bound) {

    public Plan {
        findings = List.copyOf(findings);
        cost = List.copyOf(cost);
    }

    /** A plan without a bound. */
    public Plan(String problemTitle, Timetable timetable, List<Finding> findings, List<CostLine> cost, long mediumCost,
            long softCost, SearchNote search) {
        this(problemTitle, timetable, findings, cost, mediumCost, softCost, search, Optional.empty());
    }

    public boolean isSound() {
        return findings.isEmpty();
    }

    /** Seed and length of the search; no clock time, so that equal input gives equal bytes. */
    public record SearchNote(long seed, long schedules) {
    }
}
