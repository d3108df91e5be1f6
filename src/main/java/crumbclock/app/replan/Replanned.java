package crumbclock.app.replan;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;

/**
 * How the day goes on.
 *
 * @param problem as it is by now, with everything that has begun as fixed steps
 * @param plan    audited as a whole; findings that what happened has caused are among its findings
 * @param news    what is different for whom, and what is lost
 */
public record Replanned(Problem problem, Plan plan, DayNews news) {
}
