package crumbclock.search;

import crumbclock.domain.plan.Timetable;
import crumbclock.engine.cost.Cost;

/**
 * The best timetable found.
 *
 * @param cost      as the engine adds it up; the audit must come to the same
 * @param schedules schedules generated in all
 */
public record SearchResult(Timetable timetable, Cost cost, long schedules) {
}
