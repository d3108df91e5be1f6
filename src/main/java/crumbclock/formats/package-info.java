/**
 * Files to problems and plans and back, or the full list of issues: never half a problem. A problem is read by
 * {@link crumbclock.formats.ProblemReader}, a plan by {@code PlanJson}. Uses domain, units and methods.
 */
package crumbclock.formats;
