/**
 * What the planner talks about, as values without rules: the kitchen, the steps of all cakes, the orders, and the
 * plan that comes out. The engine and the audit both stand on these records and on nothing else of each other.
 */
package crumbclock.domain;
