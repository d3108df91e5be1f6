/** One whole planning problem: kitchen, orders, steps, waits, limits, wishes and what is already fixed. */
package crumbclock.domain.problem;
