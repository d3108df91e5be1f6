/** Faults of the input, collected to be told all at once. */
package crumbclock.formats.issue;
