/** Dates, weekdays and times of day as people write them, turned into minutes from the problem's start. */
package crumbclock.formats.calendar;
