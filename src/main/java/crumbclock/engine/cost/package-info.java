/** What a timetable is worth: the wishes and lateness, in the points of the weights table. */
package crumbclock.engine.cost;
