/**
 * From decisions to a timed plan. Pure: no clock, no random, no files, nothing of the search.
 *
 * <p>{@code model} compiles a problem into tasks with needs in plain numbers, {@code book} holds who and what is
 * taken when, {@code shelf} finds room to stand, {@code decode} turns an order of work into a timetable, and
 * {@code cost} says what it is worth.
 */
package crumbclock.engine;
