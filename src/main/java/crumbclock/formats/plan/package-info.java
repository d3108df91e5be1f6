/** The plan file, written and read completely, and the fixed steps of a problem file, which look the same. */
package crumbclock.formats.plan;
