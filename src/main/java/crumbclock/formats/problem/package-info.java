/** The problem file and what it names besides kitchen and orders: methods, batches, weights. */
package crumbclock.formats.problem;
