/**
 * An exact solver, OR-Tools CP-SAT, on the same problems for the same time: what it finds, and what it proves that no
 * plan can better. {@link crumbclock.bench.reference.KitchenModel} says what its model of a kitchen leaves out.
 */
package crumbclock.bench.reference;
