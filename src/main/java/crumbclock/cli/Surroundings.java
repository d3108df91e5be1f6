package crumbclock.cli;

import java.io.PrintStream;

/**
 * What a command needs of the world outside.
 *
 * @param out       results
 * @param err       faults and progress
 * @param terminal  whether somebody watches, so that lines may be overwritten
 * @param traces    whether a failure shows its stack trace
 * @param interrupt how the user ends a search early
 */
record Surroundings(PrintStream out, PrintStream err, boolean terminal, boolean traces, Interrupt interrupt) {
}
