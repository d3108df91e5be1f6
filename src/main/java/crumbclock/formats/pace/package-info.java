/** Paces that were learned: as JSON, and into the kitchen file. */
package crumbclock.formats.pace;
