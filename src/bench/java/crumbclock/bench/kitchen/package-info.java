/** Kitchens that the planner is measured on: the shipped problems, and made-up ones of any size. */
package crumbclock.bench.kitchen;
