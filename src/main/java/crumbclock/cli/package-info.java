/**
 * Arguments, streams, exit codes and files: the only place that touches {@code System} or the clock. Uses app, formats
 * and report.
 */
package crumbclock.cli;
