package crumbclock.domain.promise;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;

/**
 * An audited, sound plan with the new order in it, that is handed over in the plan's window.
 *
 * @param problem   with the new order's window as promised
 * @param own       what becomes of the new order
 * @param sayYesBy  the first minute at which this plan differs from the one that people have: until then they can go on as they are,
 *                  and still follow it
 */
public record PromisedPlan(Problem problem, Plan plan, Outcome own, Toll toll, int sayYesBy) {
}
