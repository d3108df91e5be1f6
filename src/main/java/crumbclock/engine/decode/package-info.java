/**
 * Turns an order of work into a timetable, unit by unit, always from early to late in abstract time.
 *
 * <p>A unit is placed as a whole: each member takes its earliest slot; where a most wait breaks, or an oven, shelf or
 * hand is not free, the lower bound of the member in the way is raised and the placer steps back to it. Bounds only
 * grow, so it ends. A stay whose end is not known yet is booked open-ended, and cut when the next step takes the thing out.
 */
package crumbclock.engine.decode;
