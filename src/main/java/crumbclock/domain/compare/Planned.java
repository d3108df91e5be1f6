package crumbclock.domain.compare;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;

/**
 * One problem with its plan, under a name.
 *
 * @param name  fit for a folder, unique among those that are compared; the base is called {@code base}
 * @param title for people: what differs
 */
public record Planned(String name, String title, Problem problem, Plan plan) {
}
