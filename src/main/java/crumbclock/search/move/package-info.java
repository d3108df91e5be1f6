/**
 * Moves on the order of work. They stand on classes of Timefold that are not part of its public API, and so are kept
 * together here.
 */
package crumbclock.search.move;
