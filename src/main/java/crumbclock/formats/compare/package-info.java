/** The table of a comparison as CSV and JSON. */
package crumbclock.formats.compare;
