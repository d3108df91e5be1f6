package crumbclock.app.replan;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.day.DayState;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;

/**
 * How the day goes on.
 *
 * @param problem as it is by now, with everything that has begun as fixed steps
 * @param plan    audited as a whole; findings that what happened has caused are among its findings
 * @param news    what is different for whom, and what is lost
 * @param state   what the problem differs in from the one in its file
 */
public record Replanned(Problem problem, Plan plan, DayNews news, DayState state) {
}
