package crumbclock.domain.plan;

import java.util.List;

/**
 * A timetable with what the audit said of it and what it cost.
 *
 * @param findings    broken rules; empty for a sound plan
 * @param cost        one line for lateness and each wish
 * @param mediumCost  sum of the medium lines
 * @param softCost    sum of the soft lines
 * @param search      how it came about
 */
public record Plan(String problemTitle, Timetable timetable, List<Finding> findings, List<CostLine> cost,
        long mediumCost, long softCost, SearchNote search) {

    public Plan {
        findings = List.copyOf(findings);
        cost = List.copyOf(cost);
    }

    public boolean isSound() {
        return findings.isEmpty();
    }

    /** Seed and length of the search; no clock time, so that equal input gives equal bytes. */
    public record SearchNote(long seed, long schedules) {
    }
}
