/** Changes of a problem as people write them, in a file or in a few words, to changes in minutes and the problem that they make. */
package crumbclock.formats.change;
