package crumbclock.rules;

import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import java.util.List;

/**
 * What the audit found and what the timetable costs.
 *
 * @param findings   broken rules, by rule, time, place and items; empty for a sound timetable
 * @param cost       one line for lateness and one for each of W01–W07, also when it is 0; one for W08 where there is a
 *                   plan to keep to
 * @param mediumCost points for lateness
 * @param softCost   points for the wishes
 */
public record AuditResult(List<Finding> findings, List<CostLine> cost, long mediumCost, long softCost) {

    public AuditResult {
        findings = List.copyOf(findings);
        cost = List.copyOf(cost);
    }

    public boolean isSound() {
        return findings.isEmpty();
    }
}
