/**
 * Why an order is late or not possible, and what its time hangs on. Causes are found by planning smaller or easier
 * problems again: an order alone, hand-overs alone, one kind of rule kept or dropped.
 */
package crumbclock.app.reason;
