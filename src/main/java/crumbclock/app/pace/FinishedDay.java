package crumbclock.app.pace;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;

/**
 * What was planned, and what was written down of it.
 *
 * @param timetable that people worked by
 */
public record FinishedDay(Problem problem, Timetable timetable, DayLog log) {
}
