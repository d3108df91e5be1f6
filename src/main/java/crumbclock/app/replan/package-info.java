/**
 * Planning again while the day runs: what happened is taken from a day file, what runs goes on, and the plan that people
 * have changes as little as it must. Knows no files, no streams and no clock: now is given.
 */
package crumbclock.app.replan;
