/** Files read whole, and written whole or not at all. */
package crumbclock.formats.file;
