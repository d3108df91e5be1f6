/**
 * Measures the planner: published sets through the same engine and search that plan cakes, made-up kitchens, and an
 * exact solver beside them. Not part of the jar or the tests; the Maven profile {@code benchmark} compiles and runs it.
 */
package crumbclock.bench;
