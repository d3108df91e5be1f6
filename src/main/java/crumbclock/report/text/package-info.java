/** The plan in a terminal, in at most some forty lines. Figures come from the plan; none are computed here. */
package crumbclock.report.text;
