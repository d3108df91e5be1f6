/** What finished days say of minutes: on a terminal, and on a page with drawings to scale. */
package crumbclock.report.pace;
