/** Plans beside each other: works out the table's figures, once, and shows them on a page and in the terminal. */
package crumbclock.report.compare;
